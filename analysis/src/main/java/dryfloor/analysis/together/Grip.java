package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Effect.*;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What an effect sets, of which there is but one: a valve stands open or shut, a circuit is cut at
 * certain times, a run comes apart at one place. Two failures that set the same thing otherwise
 * can't both be.
 */
final class Grip {

  private Grip() {}

  static boolean excludes(List<Effect> one, List<Effect> other) {
    Map<String, Set<Effect>> first = byGrip(one);
    Map<String, Set<Effect>> second = byGrip(other);
    Set<String> common = new HashSet<>(first.keySet());
    common.retainAll(second.keySet());
    return common.stream().anyMatch(grip -> !Objects.equals(first.get(grip), second.get(grip)));
  }

  private static Map<String, Set<Effect>> byGrip(List<Effect> effects) {
    return effects.stream().collect(Collectors.groupingBy(Grip::of, Collectors.toSet()));
  }

  private static String of(Effect effect) {
    return switch (effect) {
      case CircuitOff e -> "power of " + e.circuit();
      case CircuitOn e -> "power of " + e.circuit();
      case PumpCannotRun e -> "running of " + e.pump();
      case IgnoresControls e -> "running of " + e.part();
      case PumpWeakened e -> "running of " + e.pump();
      case ValveHeld e -> "opening of " + e.valve();
      case ValveFrozen e -> "opening of " + e.valve();
      case CheckValveHeldOpen e -> "closing of " + e.checkValve();
      case CheckValveLeaks e -> "closing of " + e.checkValve();
      case CheckValveHeldShut e -> "closing of " + e.checkValve();
      case SiphonBreakHeldShut e -> "hole " + e.siphonBreak();
      case PrimesEarly e -> "priming " + e.run();
      case RunsPartlyFull e -> "hole in " + e.run();
      case RunNarrowed e -> "bore of " + e.run();
      case WeirNarrowed e -> "length of " + e.weir();
      case RunParted e -> "wall of " + e.run();
      case RunLeaks e -> "wall of " + e.run();
      case EndMoved e -> "end " + e.end() + " of " + e.run();
      case VesselLeaks e -> "wall of " + e.vessel();
      case VesselLost e -> "wall of " + e.vessel();
      case Thrown e -> "running of " + e.powered();
      case DrainTakesNothing e -> "taking of " + e.drain();
      case SupplyPressureTimes e -> "pressure of " + e.supply();
      case SwitchHeld e -> "feeling of " + e.levelSwitch();
      case SwitchBand e -> "feeling of " + e.levelSwitch();
      case ControlDead e -> "acting of " + e.control();
      case ControlTripped e -> "acting of " + e.control();
      case HandSwitchSet e -> "setting of " + e.handSwitch();
      case Poured e -> "pouring into " + e.vessel();
      case Taken e -> "taking out of " + e.vessel();
      case AwayTimes e -> "time away";
      case AwayFrom e -> "time away";
      case During e -> of(e.what());
      case News e -> "news of " + e.failure();
    };
  }
}
