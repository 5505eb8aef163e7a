package dryfloor.app.command;

import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.UncertainDrawing;
import java.nio.file.Path;
import java.util.List;

/** What came of a file that was asked for. */
sealed interface Loaded {

  Path file();

  /** A sound drawing, with what should be looked at in it and what is not known exactly. */
  record Drawing(
      Path file, Installation installation, List<Problem> warnings, UncertainDrawing uncertain)
      implements Loaded {
    public Drawing {
      warnings = List.copyOf(warnings);
    }
  }

  /** No drawing, and everything that is wrong with it. */
  record Refused(Path file, List<Problem> problems) implements Loaded {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
