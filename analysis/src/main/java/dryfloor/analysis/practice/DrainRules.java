package dryfloor.analysis.practice;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.stream.Stream;

/** Rules about siphon breaks and about drains that wait for the main drain to fail. */
final class DrainRules {

  /** Bores closer than this are the same (m). */
  private static final double SAME = 1e-4;

  private final Installation drawing;

  DrainRules(Installation drawing) {
    this.drawing = drawing;
  }

  Stream<Warning> all() {
    return drawing.runs().stream()
        .flatMap(
            run ->
                Stream.of(siphonBreaks(run), narrower(run), valves(run))
                    .flatMap(warnings -> warnings));
  }

  private static Stream<Warning> siphonBreaks(Run run) {
    int holes =
        run.parts().stream()
            .filter(Part.SiphonBreak.class::isInstance)
            .mapToInt(hole -> ((Part.SiphonBreak) hole).count())
            .sum();
    return run.parts().stream()
        .filter(part -> holes == 1 && part instanceof Part.SiphonBreak)
        .map(hole -> new Warning.SingleSiphonBreak(run.id(), hole.id()));
  }

  private Stream<Warning> narrower(Run run) {
    return isEmergency(run)
        ? drawing.runs().stream()
            .filter(other -> other.duty() == Run.Duty.DRAIN && other.bore() > run.bore() + SAME)
            .filter(other -> beginsAt(other, run.from().at()))
            .max(Comparator.comparingDouble(Run::bore))
            .stream()
            .map(
                main -> new Warning.EmergencyNarrower(run.id(), run.bore(), main.id(), main.bore()))
        : Stream.empty();
  }

  private static boolean isEmergency(Run run) {
    return run.duty() == Run.Duty.EMERGENCY;
  }

  private static boolean beginsAt(Run run, String place) {
    return run.from() instanceof RunEnd.Opening opening && opening.at().equals(place);
  }

  private static Stream<Warning> valves(Run run) {
    return run.parts().stream()
        .filter(part -> isEmergency(run) && part instanceof Part.Valve)
        .map(valve -> new Warning.EmergencyWithValve(run.id(), valve.id()));
  }
}
