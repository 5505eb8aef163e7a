package dryfloor.analysis.network;

import dryfloor.analysis.hydraulics.Fitting;
import dryfloor.model.element.Run;

/** The fittings of the drawing, looked up in the table of losses. */
final class FittingLoss {

  private FittingLoss() {}

  /** Loss of all fittings of a run but those at its ends (velocity heads). */
  static double between(Run run) {
    return run.fittings().stream()
        .filter(counted -> !isEnd(counted.kind()))
        .mapToDouble(counted -> counted.count() * entry(counted.kind()).lossCoefficient())
        .sum();
  }

  /**
   * Loss where water enters at one end and leaves at the other (velocity heads): what the run
   * names, or a sharp entrance and an exit.
   */
  static double atEnds(Run run) {
    return run.fittings().stream()
        .filter(counted -> isEnd(counted.kind()))
        .mapToDouble(counted -> counted.count() * entry(counted.kind()).lossCoefficient())
        .reduce(Double::sum)
        .orElse(Fitting.ENTRANCE.lossCoefficient() + Fitting.EXIT.lossCoefficient());
  }

  /**
   * Loss where water enters from open water, of {@link #atEnds} what is not the exit (velocity
   * heads).
   */
  static double entrance(Run run) {
    return run.fittings().stream()
        .filter(counted -> isEnd(counted.kind()))
        .mapToDouble(
            counted ->
                isExit(counted.kind())
                    ? 0
                    : counted.count() * entry(counted.kind()).lossCoefficient())
        .reduce(Double::sum)
        .orElse(Fitting.ENTRANCE.lossCoefficient());
  }

  private static boolean isExit(dryfloor.model.element.Fitting kind) {
    return kind == dryfloor.model.element.Fitting.EXIT;
  }

  private static boolean isEnd(dryfloor.model.element.Fitting kind) {
    return switch (kind) {
      case SHARP_ENTRANCE, ROUNDED_ENTRANCE, PROTRUDING_ENTRANCE, EXIT -> true;
      case ELBOW_90,
          LONG_BEND_90,
          ELBOW_45,
          RETURN_BEND_180,
          TEE_THROUGH,
          TEE_BRANCH,
          UNION,
          GATE_VALVE_OPEN,
          BALL_VALVE_OPEN,
          BUTTERFLY_VALVE_OPEN,
          FOOT_VALVE ->
          false;
    };
  }

  private static Fitting entry(dryfloor.model.element.Fitting kind) {
    return switch (kind) {
      case ELBOW_90 -> Fitting.ELBOW_90;
      case LONG_BEND_90 -> Fitting.LONG_BEND_90;
      case ELBOW_45 -> Fitting.ELBOW_45;
      case RETURN_BEND_180 -> Fitting.RETURN_BEND_180;
      case TEE_THROUGH -> Fitting.TEE_THROUGH;
      case TEE_BRANCH -> Fitting.TEE_BRANCH;
      case UNION -> Fitting.UNION;
      case SHARP_ENTRANCE -> Fitting.ENTRANCE;
      case ROUNDED_ENTRANCE -> Fitting.ENTRANCE_ROUNDED;
      case PROTRUDING_ENTRANCE -> Fitting.ENTRANCE_RE_ENTRANT;
      case EXIT -> Fitting.EXIT;
      case GATE_VALVE_OPEN -> Fitting.GATE_VALVE_OPEN;
      case BALL_VALVE_OPEN -> Fitting.BALL_VALVE_OPEN;
      case BUTTERFLY_VALVE_OPEN -> Fitting.BUTTERFLY_VALVE_OPEN;
      case FOOT_VALVE -> Fitting.FOOT_VALVE;
    };
  }
}
