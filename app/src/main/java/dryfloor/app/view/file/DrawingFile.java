package dryfloor.app.view.file;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The file of a drawing, as far as it is known.
 *
 * @param path where it is; none for a drawing that was never saved
 * @param saved what it holds, or what a new drawing began with; none where that is not known
 * @param stamp of the file when it was last read or written here
 * @param units that its quantities are written in
 */
public record DrawingFile(
    Optional<Path> path, Optional<Installation> saved, Stamp stamp, Units units) {

  /** A drawing without a file. */
  public static DrawingFile untitled(Installation begun) {
    return new DrawingFile(Optional.empty(), Optional.of(begun), Stamp.MISSING, Units.METRIC);
  }

  /** The same drawing, to be saved elsewhere. */
  public DrawingFile withoutPath() {
    return new DrawingFile(Optional.empty(), Optional.empty(), Stamp.MISSING, units);
  }

  /** Whether there is something that the file does not hold. */
  public boolean hasUnsaved(Installation present) {
    return !saved.equals(Optional.of(present));
  }

  /** Whether the file on the disk is another one than was read or written here; reads it. */
  public boolean isChangedByOthers() {
    return path.isPresent() && isChangedByOthers(path.get());
  }

  private boolean isChangedByOthers(Path file) {
    try {
      Stamp now = Stamp.of(file);
      return !now.equals(Stamp.MISSING) && !now.equals(stamp);
    } catch (IOException unreadable) {
      return false;
    }
  }

  /**
   * Saves where the file is, unless others have written it since.
   *
   * @throws IllegalStateException if there is no file yet
   */
  public Saving save(Installation drawing) {
    Path file = path.orElseThrow(() -> new IllegalStateException("nobody said where to save"));
    return isChangedByOthers(file) ? new Saving.ChangedByOthers(file) : saveAs(drawing, file);
  }

  /** Saves there, whatever is there; what it held is kept beside it as {@code .bak}. */
  public Saving saveAs(Installation drawing, Path target) {
    if (Files.isDirectory(target)) {
      return new Saving.Failed(target, Saving.Trouble.IS_A_FOLDER, "");
    }
    try {
      Stamp written = Stamp.ofText(InstallationWriter.text(drawing, units));
      InstallationWriter.save(drawing, target, units);
      return new Saving.Saved(
          new DrawingFile(Optional.of(target), Optional.of(drawing), written, units));
    } catch (NoSuchFileException e) {
      return new Saving.Failed(target, Saving.Trouble.NO_FOLDER, "");
    } catch (AccessDeniedException e) {
      return new Saving.Failed(target, Saving.Trouble.NO_PERMISSION, "");
    } catch (IOException e) {
      return new Saving.Failed(target, Saving.Trouble.OTHER, String.valueOf(e.getMessage()));
    } catch (IllegalArgumentException e) {
      return new Saving.Failed(target, Saving.Trouble.NOT_DRAWABLE, String.valueOf(e.getMessage()));
    }
  }
}
