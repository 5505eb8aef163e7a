package dryfloor.app.view.edit;

import dryfloor.model.file.Problem;
import java.util.List;

/**
 * What came of putting something into a drawing.
 *
 * @param id of what was put there
 */
public record Placed(Trial trial, String id) {

  static Placed refused(String message, String remedy) {
    return new Placed(new Trial.Refused(List.of(new Problem(1, 1, "", message, remedy))), "");
  }
}
