package dryfloor.app.command;

import dryfloor.app.paper.PaperFile;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where papers go, and what is said of each. */
final class PaperFolder {

  private final Path folder;
  private final String stem;
  private final Surface surface;

  /**
   * A folder for the papers of one drawing.
   *
   * @param drawing whose name they all begin with
   */
  PaperFolder(Path folder, Path drawing, Surface surface) {
    this.folder = folder;
    this.stem = String.valueOf(drawing.getFileName()).replaceFirst("\\.json$", "");
    this.surface = surface;
  }

  /** Writes one file; whether that went well, which is told either way. */
  boolean write(PaperFile file) {
    Path target = file.placeIn(folder, stem);
    try {
      Files.createDirectories(folder.toAbsolutePath());
      WriteComplaint.refuseFolder(target);
      Files.write(target, file.content().bytes());
    } catch (IOException e) {
      surface.complain(
          "dryfloor: "
              + VisibleText.of(target.toString())
              + " can't be written: "
              + WriteComplaint.of(e)
              + "\n");
      return false;
    }
    surface.answer(VisibleText.of(target.toString()) + " written\n");
    return true;
  }
}
