package dryfloor.analysis.network;

import dryfloor.analysis.hydraulics.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;

/** The fittings of the drawing, looked up in the table of losses. */
final class FittingLoss {

  private FittingLoss() {}

  /** Loss of all fittings of a run but those at its ends (velocity heads). */
  static double between(Run run) {
    return run.fittings().stream()
        .filter(counted -> !isEnd(counted.kind()))
        .mapToDouble(FittingLoss::loss)
        .sum();
  }

  /**
   * Loss at the first end of a run (velocity heads): the entrances that it names; where it names
   * neither entrance nor exit, a sharp entrance. An end at a junction has none, what is lost there
   * belongs to the tee.
   *
   * <p>Losses stay with their ends whichever way the water goes. Where both ends are open that is
   * right in sum for water that goes backwards, too. Where the other end is at a junction, water
   * that leaves by a first end is charged 0.5 for 1, and water that enters by a second end 1 for
   * 0.5: across the junction from one run to the next that evens out.
   */
  static double atFirst(Run run, PipeEnd end) {
    boolean asDrawn = !(run.from() instanceof RunEnd.AtJunction);
    return asDrawn && namesEnds(run) && !end.atJunction() ? entrances(run) : atNewFirst(end);
  }

  /**
   * Loss at the second end of a run (velocity heads), as {@link #atFirst}: the exits that it names,
   * or one.
   */
  static double atSecond(Run run, PipeEnd end) {
    boolean asDrawn = !(run.to() instanceof RunEnd.AtJunction);
    return asDrawn && namesEnds(run) && !end.atJunction() ? exits(run) : atNewSecond(end);
  }

  /** Loss at a first end that the drawing does not have: where a run was cut or came off. */
  static double atNewFirst(PipeEnd end) {
    return end.atJunction() ? 0 : Fitting.ENTRANCE.lossCoefficient();
  }

  /** Loss at a second end that the drawing does not have. */
  static double atNewSecond(PipeEnd end) {
    return end.atJunction() ? 0 : Fitting.EXIT.lossCoefficient();
  }

  /**
   * Loss just inside the end by which water enters from open water, whichever that is (velocity
   * heads): the entrances that the run names. A sharp one where it names no end at all, and where
   * it begins at a junction, so that it had none to name.
   */
  static double entrance(Run run) {
    boolean mayName = !(run.from() instanceof RunEnd.AtJunction);
    return entrances(run) > 0 || (mayName && namesEnds(run))
        ? entrances(run)
        : Fitting.ENTRANCE.lossCoefficient();
  }

  private static boolean namesEnds(Run run) {
    return run.fittings().stream().anyMatch(counted -> isEnd(counted.kind()));
  }

  private static double entrances(Run run) {
    return run.fittings().stream()
        .filter(counted -> isEnd(counted.kind()) && !isExit(counted.kind()))
        .mapToDouble(FittingLoss::loss)
        .sum();
  }

  private static double exits(Run run) {
    return run.fittings().stream()
        .filter(counted -> isExit(counted.kind()))
        .mapToDouble(FittingLoss::loss)
        .sum();
  }

  private static double loss(Run.FittingCount counted) {
    return counted.count() * entry(counted.kind()).lossCoefficient();
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
