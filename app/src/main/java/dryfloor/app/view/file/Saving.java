package dryfloor.app.view.file;

import java.nio.file.Path;

/** What came of saving. */
public sealed interface Saving {

  /** It is on the disk, and this is the file now. */
  record Saved(DrawingFile file) implements Saving {}

  /** Somebody else has written the file since it was opened; nothing was written. */
  record ChangedByOthers(Path path) implements Saving {}

  /**
   * Nothing was written, the old file is as it was.
   *
   * @param detail in the words of the system
   */
  record Failed(Path path, Trouble trouble, String detail) implements Saving {}

  /** Why nothing could be written. */
  enum Trouble {
    NO_FOLDER,
    NO_PERMISSION,
    IS_A_FOLDER,
    NOT_DRAWABLE,
    OTHER
  }
}
