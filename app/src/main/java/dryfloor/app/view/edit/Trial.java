package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.util.List;

/** What came of a change that was tried. */
public sealed interface Trial {

  /** A drawing that makes sense. */
  record Sound(Installation drawing) implements Trial {}

  /**
   * No such drawing.
   *
   * @param problems everything that is wrong with it, never empty
   */
  record Refused(List<Problem> problems) implements Trial {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
