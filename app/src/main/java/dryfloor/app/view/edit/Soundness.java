package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a change must not make worse: the errors that a drawing had before it. */
public final class Soundness {

  /** An error by its place, whatever its numbers are. */
  private record Place(String element, String field) {}

  private final Set<Place> known = new HashSet<>();

  /** The errors of this drawing are known already. */
  public Soundness(Installation before) {
    errors(before).forEach(error -> known.add(place(error)));
  }

  /** Errors of a drawing that were not there before. */
  public List<Finding> newErrors(Installation next) {
    return errors(next).stream().filter(error -> !known.contains(place(error))).toList();
  }

  private static List<Finding> errors(Installation drawing) {
    return DrawingCheck.check(drawing).stream().filter(Finding::isError).toList();
  }

  private static Place place(Finding error) {
    return new Place(error.element(), error.field());
  }
}
