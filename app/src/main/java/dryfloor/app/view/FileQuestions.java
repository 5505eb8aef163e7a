package dryfloor.app.view;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Window;

/** Asks which file is meant; nothing where the user changed their mind. */
interface FileQuestions {

  /** Which drawing to open. */
  Optional<Path> toOpen(Window owner, Optional<Path> near);

  /**
   * Where to write.
   *
   * @param name to begin with
   */
  Optional<Path> toWrite(Window owner, Kind kind, String name, Optional<Path> near);

  /** Which folder to write several files into. */
  Optional<Path> toFill(Window owner, Optional<Path> near);

  /** What is written. */
  enum Kind {
    DRAWING("json"),
    SVG("svg"),
    PNG("png"),
    CSV("csv");

    private final String ending;

    Kind(String ending) {
      this.ending = ending;
    }

    String ending() {
      return ending;
    }

    /** What it is called in a list of kinds. */
    String word() {
      return Words.of("file.kind." + ending);
    }
  }
}
