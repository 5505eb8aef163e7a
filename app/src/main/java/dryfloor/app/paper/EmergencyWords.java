package dryfloor.app.paper;

import dryfloor.analysis.emergency.FirstStep;
import dryfloor.analysis.emergency.FirstSteps;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.Wording;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The card for the cabinet door. */
final class EmergencyWords {

  /** So many cases have room on one card. */
  private static final int ROOM = 6;

  private final Wording wording;

  private EmergencyWords(Wording wording) {
    this.wording = wording;
  }

  static List<Report.Emergency> of(Question question) {
    EmergencyWords words = new EmergencyWords(question.wording());
    List<Report.Emergency> cases = new ArrayList<>();
    Set<List<Object>> told = new HashSet<>();
    FindingWords.answered(question.sweep())
        .filter(answered -> Answer.of(answered) == Answer.WET)
        .forEach(
            answered -> {
              Report.Emergency emergency = words.of(answered);
              if (cases.size() < ROOM
                  && told.add(List.of(emergency.steps(), emergency.finding().sentence()))) {
                cases.add(emergency);
              }
            });
    return cases;
  }

  private Report.Emergency of(FailureResult.Answered answered) {
    List<String> steps = new ArrayList<>();
    for (FirstStep step : FirstSteps.of(wording.installation(), answered.outcome())) {
      steps.add(sentence(step));
    }
    if (steps.isEmpty()) {
      steps.add(
          "Nothing in the drawing shuts this off. Keep people and electricity away from the water,"
              + " draw the water off to a vessel with room, and call for help.");
    }
    return new Report.Emergency(
        FindingWords.of(wording, answered),
        FailureTraits.howNoticed(answered.failure(), wording.installation()),
        steps);
  }

  private String sentence(FirstStep step) {
    return switch (step) {
      case FirstStep.ShutSupply supply -> "Shut " + the(supply.supply()) + where(supply.supply());
      case FirstStep.SwitchOff off ->
          "Switch off "
              + the(off.circuit())
              + " at the breaker, with dry hands: that stops "
              + Sentences.enumerate(off.parts().stream().map(this::the).toList())
              + ".";
      case FirstStep.ShutValve valve ->
          "Shut " + the(valve.valve()) + " in " + the(valve.run()) + where(valve.run());
      case FirstStep.LetAirIn siphon ->
          "Let air into "
              + the(siphon.run())
              + " at its top, or lift its outlet out of the water: it runs back as a siphon.";
    };
  }

  /** On which storey it is, as far as the drawing says. */
  private String where(String id) {
    return standsIn(id).map(place -> " (" + wording.names().of(place) + ").").orElse(".");
  }

  private Optional<String> standsIn(String id) {
    return wording.installation().runs().stream()
        .filter(run -> run.id().equals(id))
        .findFirst()
        .flatMap(Run::standsIn);
  }

  private String the(String id) {
    return wording.names().the(id);
  }
}
