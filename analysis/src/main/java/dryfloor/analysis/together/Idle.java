package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Effect.*;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tells when an effect would have changed nothing in a course that is known without it: a blocked
 * way that carried nothing anyhow, a dead guard that was never called. The known course then
 * satisfies every law with the effect too, and is the answer.
 */
final class Idle {

  /** Levels between kept moments may lie this much beyond them (m). */
  private static final double BETWEEN_MOMENTS = 1e-4;

  private final Installation installation;

  Idle(Installation installation) {
    this.installation = installation;
  }

  /**
   * Whether all that some effects change is changed anyway, or idle in the courses of that. Where a
   * siphon break was in doubt only one of two courses is known.
   *
   * @param already what is changed without them
   * @param courses what that makes the water do, in parts of the drawing that have nothing to do
   *     with each other
   */
  boolean addsNothing(List<Effect> effects, Collection<Effect> already, List<Outcome> courses) {
    List<Effect> more = effects.stream().filter(effect -> !already.contains(effect)).toList();
    boolean doubt =
        courses.stream().flatMap(course -> course.notes().stream()).anyMatch(Note::isDoubt);
    return more.isEmpty()
        || (!doubt
            && more.stream()
                .allMatch(effect -> courses.stream().allMatch(course -> isIdle(effect, course))));
  }

  /** Whether it certainly changes nothing in this course. */
  boolean isIdle(Effect effect, Outcome course) {
    return switch (effect) {
      case RunNarrowed e -> carriesNothing(e.run(), course);
      case WeirNarrowed e -> passesNothing(e.weir(), course);
      case ValveHeld e -> e.opening() <= 0 && carriesNothing(runOf(e.valve()), course);
      case CheckValveHeldShut e -> carriesNothing(runOf(e.checkValve()), course);
      case DrainTakesNothing e -> getsNothing(e.drain(), course);
      case SwitchHeld e -> feelsSo(e, course);
      case ControlDead e -> neverCalled(e.control(), course);
      case CircuitOff e -> false;
      case CircuitOn e -> false;
      case PumpCannotRun e -> false;
      case IgnoresControls e -> false;
      case PumpWeakened e -> false;
      case ValveFrozen e -> false;
      case CheckValveHeldOpen e -> false;
      case CheckValveLeaks e -> false;
      case SiphonBreakHeldShut e -> false;
      case PrimesEarly e -> false;
      case RunsPartlyFull e -> false;
      case RunParted e -> false;
      case RunLeaks e -> false;
      case EndMoved e -> false;
      case VesselLeaks e -> false;
      case VesselLost e -> false;
      case Thrown e -> false;
      case SupplyPressureTimes e -> false;
      case SwitchBand e -> false;
      case ControlTripped e -> false;
      case HandSwitchSet e -> false;
      case Poured e -> false;
      case Taken e -> false;
      case AwayTimes e -> false;
      case AwayFrom e -> false;
      case During e -> isIdle(e.what(), course);
      case News e -> false;
    };
  }

  // Ways.

  private boolean carriesNothing(String run, Outcome course) {
    return passesNothing(run, course)
        && course.ledger().standing().stream()
            .filter(standing -> standing.id().equals(run))
            .allMatch(s -> Math.abs(s.after() - s.before()) < Influences.VOLUME);
  }

  private static boolean passesNothing(String path, Outcome course) {
    return course.ledger().entries().stream()
            .filter(entry -> entry.path().equals(path))
            .mapToDouble(entry -> entry.volume())
            .sum()
        < Influences.VOLUME;
  }

  private String runOf(String part) {
    return installation.runs().stream()
        .filter(run -> run.parts().stream().anyMatch(p -> p.id().equals(part)))
        .map(Run::id)
        .findFirst()
        .orElseThrow();
  }

  /** A drain that backs up gives water too. */
  private boolean getsNothing(String id, Outcome course) {
    boolean backsUp =
        installation.drains().stream()
            .filter(drain -> drain.id().equals(id))
            .map(Drain::surchargeLevel)
            .anyMatch(OptionalDouble::isPresent);
    return !backsUp
        && installation.runs().stream()
            .filter(run -> run.to().at().equals(id) || run.from().at().equals(id))
            .allMatch(run -> carriesNothing(run.id(), course));
  }

  // Guards.

  /** Whether a switch felt all the time what it is held at. */
  private boolean feelsSo(SwitchHeld held, Outcome course) {
    Control.LevelSwitch control = find(held.levelSwitch(), Control.LevelSwitch.class).orElseThrow();
    double first = level(0, control.vessel(), course);
    return held.low()
        ? first < control.lower() && highest(control.vessel(), course) < control.upper()
        : first > control.upper() && lowest(control.vessel(), course) > control.lower();
  }

  private boolean neverCalled(String control, Outcome course) {
    return find(control, Control.LeakSensor.class)
        .filter(s -> highest(s.in(), course) < bottom(s.in()) + s.depth())
        .isPresent();
  }

  private <C extends Control> Optional<C> find(String id, Class<C> kind) {
    return installation.controls().stream()
        .filter(control -> control.id().equals(id))
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst();
  }

  private double bottom(String place) {
    return Stream.concat(
            installation.vessels().stream().filter(v -> v.id().equals(place)).map(Vessel::bottom),
            installation.floors().stream().filter(f -> f.id().equals(place)).map(Floor::elevation))
        .findFirst()
        .orElseThrow();
  }

  private static double level(int moment, String place, Outcome course) {
    return course.trajectory().level(moment, place);
  }

  private static double highest(String place, Outcome course) {
    return levels(place, course).max().orElseThrow() + BETWEEN_MOMENTS;
  }

  private static double lowest(String place, Outcome course) {
    return levels(place, course).min().orElseThrow() - BETWEEN_MOMENTS;
  }

  private static DoubleStream levels(String place, Outcome course) {
    Trajectory levels = course.trajectory();
    return IntStream.range(0, levels.moments()).mapToDouble(i -> levels.level(i, place));
  }
}
