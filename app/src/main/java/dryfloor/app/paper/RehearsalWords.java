package dryfloor.app.paper;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.Wording;
import java.util.List;

/** The rehearsal sheet in words. */
final class RehearsalWords {

  private static final double A_MINUTE = 60;

  private RehearsalWords() {}

  static List<Report.Rehearsal> of(Question question) {
    return Rehearsal.of(question.sweep()).stream()
        .map(step -> rehearsal(question.wording(), step))
        .toList();
  }

  private static Report.Rehearsal rehearsal(Wording wording, RehearsalStep step) {
    String failure = FailureNames.name(step.result().failure(), wording.installation());
    return new Report.Rehearsal(
        failure,
        sentence(wording, step),
        wording.amounts().time(Math.ceil(step.readAfter() / A_MINUTE) * A_MINUTE),
        step.levels().stream()
            .filter(level -> !level.staysDry())
            .map(level -> expected(wording, level))
            .toList(),
        step.levels().stream()
            .filter(RehearsalStep.ExpectedLevel::staysDry)
            .map(level -> wording.names().label(level.vessel()))
            .toList());
  }

  private static String sentence(Wording wording, RehearsalStep step) {
    return switch (step.means()) {
      case BREAKER ->
          "Switch off at the breaker with dry hands"
              + (comesBack(step.result().failure())
                  ? ", and on again after "
                      + wording.amounts().time(wording.installation().failureSettings().outage())
                      + "."
                  : ", and leave it off until the levels have been read.");
      case PLUG -> "Switch it off at its own switch or pull its plug, with dry hands.";
      case HANDLE -> "Turn the valve by its handle, and mark where it stood.";
      case FLOAT -> "Lift the float and hold it with a wooden stick, not with the hand.";
      case WET_CLOTH -> "Lay a wet cloth on the sensor.";
    };
  }

  private static boolean comesBack(Failure failure) {
    return failure instanceof Failure.BuildingLosesPowerForAWhile
        || failure instanceof Failure.CircuitTripsForAWhile;
  }

  private static Report.Expected expected(Wording wording, RehearsalStep.ExpectedLevel level) {
    Amounts amounts = wording.amounts();
    return new Report.Expected(
        wording.names().label(level.vessel()),
        amounts.level(level.rim() - level.before()),
        amounts.level(level.rim() - level.expected()),
        "± " + amounts.level(Rehearsal.TOLERANCE),
        amounts.level(level.rim() - level.abort()));
  }
}
