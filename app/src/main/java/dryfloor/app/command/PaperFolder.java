package dryfloor.app.command;

import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
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

  /** What a file holds. */
  interface Content {
    byte[] bytes() throws IOException;
  }

  static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Writes one file; whether that went well, which is told either way. */
  boolean write(String ending, Content content) {
    Path target = folder.resolve(stem + ending);
    try {
      Files.createDirectories(folder.toAbsolutePath());
      WriteComplaint.refuseFolder(target);
      Files.write(target, content.bytes());
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
