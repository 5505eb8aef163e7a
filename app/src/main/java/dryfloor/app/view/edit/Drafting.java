package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Run;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;

/** What can be done with what is chosen. Nothing is done that would make the drawing senseless. */
public final class Drafting {

  private Drafting() {}

  /** The drawing without it, and without what can't be without it. */
  public static Trial delete(Installation drawing, String id) {
    return checked(drawing, Removal.of(drawing, id));
  }

  /** Once more, under another id. */
  public static Placed duplicate(Installation drawing, String id, Units units) {
    return Snippet.copy(drawing, id, units)
        .map(text -> Snippet.paste(drawing, text, Optional.of(id), units))
        .orElseGet(() -> Placed.refused("nothing is chosen", "choose something drawn"));
  }

  /** A tee in the middle of a run; the run is two from then on. */
  public static Placed tee(Installation drawing, Optional<String> chosen) {
    Optional<Run> run = new Surroundings(drawing, chosen).run();
    return run.map(found -> Tee.in(drawing, found))
        .map(
            placed ->
                switch (placed.trial()) {
                  case Trial.Sound sound ->
                      new Placed(checked(drawing, sound.drawing()), placed.id());
                  case Trial.Refused refused -> placed;
                })
        .orElseGet(() -> Placed.refused("there is no run for a tee", "draw a run first"));
  }

  private static Trial checked(Installation before, Installation next) {
    List<Finding> errors = new Soundness(before).newErrors(next);
    return errors.isEmpty()
        ? new Trial.Sound(next)
        : new Trial.Refused(errors.stream().map(Drafting::problem).toList());
  }

  private static Problem problem(Finding finding) {
    return new Problem(1, 1, finding.element(), finding.message(), finding.remedy());
  }
}
