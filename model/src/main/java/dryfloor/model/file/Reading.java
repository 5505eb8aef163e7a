package dryfloor.model.file;

import dryfloor.model.Installation;
import java.util.List;

/** What came of reading a file. */
public sealed interface Reading {

  /**
   * A sound installation.
   *
   * @param warnings what may be meant but should be looked at
   * @param uncertain what is known within limits only
   */
  record Read(Installation installation, List<Problem> warnings, UncertainDrawing uncertain)
      implements Reading {
    public Read {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Not an installation.
   *
   * @param problems everything that is wrong, in the order of the file, never empty
   */
  record Rejected(List<Problem> problems) implements Reading {
    public Rejected {
      problems = List.copyOf(problems);
    }
  }
}
