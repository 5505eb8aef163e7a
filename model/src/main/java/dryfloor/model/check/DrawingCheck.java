package dryfloor.model.check;

import dryfloor.model.Installation;
import java.util.List;
import java.util.Set;

/**
 * Checks whether a drawing makes sense. All that is wrong is found at once; nothing is changed.
 *
 * <p>A quantity that is not a number counts as unknown: whoever made the installation has reported
 * it already, and nothing more is said about it.
 */
public final class DrawingCheck {

  private DrawingCheck() {}

  /** Everything found in this installation, errors and warnings, in the order of the drawing. */
  public static List<Finding> check(Installation installation) {
    return check(installation, Set.of());
  }

  /**
   * Everything found in an installation of which some things could not be read.
   *
   * @param unread ids of things that are in the drawing but not in the installation
   */
  public static List<Finding> check(Installation installation, Set<String> unread) {
    Drawing drawing = Drawing.of(installation, unread);
    Findings findings = new Findings();
    new IdCheck(drawing, findings).run();
    new VesselCheck(drawing, findings).run();
    new SpillCheck(drawing, findings).run();
    new WeirCheck(drawing, findings).run();
    new RunCheck(drawing, findings).run();
    new PartCheck(drawing, findings).run();
    new LandingCheck(drawing, findings).run();
    new ControlCheck(drawing, findings).run();
    new OutsideCheck(drawing, findings).run();
    new SequenceCheck(drawing, findings).run();
    return findings.all();
  }
}
