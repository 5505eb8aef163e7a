package dryfloor.app.paper;

import dryfloor.analysis.emergency.FirstStep;
import dryfloor.analysis.emergency.FirstSteps;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.VerdictSentence;
import dryfloor.app.report.Wording;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The card for the cabinet door. */
final class EmergencyWords {

  /** So many cases have room on one card. */
  private static final int ROOM = 6;

  /** Words for what can be shut. */
  private static final List<String> SHUT = List.of("supply", "tap", "valve", "cock", "hydrant");

  /** In a cubic metre. */
  private static final double LITRES = 1000;

  private final Wording wording;

  /** What wets a floor, the worst first. */
  private final List<FailureResult.Answered> wet;

  private EmergencyWords(Wording wording, SweepResult sweep) {
    this.wording = wording;
    this.wet =
        FindingWords.answered(sweep).filter(answered -> Answer.of(answered) == Answer.WET).toList();
  }

  static Report.Card of(Question question) {
    return new EmergencyWords(question.wording(), question.sweep()).card();
  }

  private Report.Card card() {
    List<Report.Emergency> cases = new ArrayList<>();
    Set<String> breakers = new LinkedHashSet<>();
    Set<List<Object>> told = new HashSet<>();
    for (FailureResult.Answered answered : wet) {
      if (cases.size() == ROOM) {
        break;
      }
      Report.Emergency emergency = of(answered);
      if (told.add(
          List.of(
              emergency.steps(),
              emergency.seen(),
              Math.round(answered.outcome().reachedFloors() * LITRES)))) {
        cases.add(emergency);
        breakers.addAll(breakers(answered));
      }
    }
    return new Report.Card(cases, List.copyOf(breakers));
  }

  /** Where a circuit is switched off, if the drawing says so. */
  private Optional<String> breaker(String circuit) {
    return wording.installation().circuits().stream()
        .filter(drawn -> drawn.id().equals(circuit))
        .findFirst()
        .flatMap(Circuit::breaker);
  }

  /** Circuits of which the drawing does not say where they are switched off. */
  private List<String> breakers(FailureResult.Answered answered) {
    return FirstSteps.of(wording.installation(), answered.outcome()).stream()
        .filter(FirstStep.SwitchOff.class::isInstance)
        .map(FirstStep.SwitchOff.class::cast)
        .filter(off -> breaker(off.circuit()).isEmpty())
        .map(off -> wording.names().label(off.circuit()))
        .toList();
  }

  private Report.Emergency of(FailureResult.Answered answered) {
    List<String> steps = new ArrayList<>();
    List<FirstStep> all = FirstSteps.of(wording.installation(), answered.outcome());
    all.stream()
        .filter(step -> !(step instanceof FirstStep.ShutValve))
        .filter(step -> harm(step).isEmpty())
        .map(this::sentence)
        .forEach(steps::add);
    valves(all).ifPresent(steps::add);
    all.forEach(step -> harm(step).ifPresent(harm -> steps.add(sentence(step) + " " + harm)));
    if (steps.isEmpty()) {
      steps.add(
          "Nothing in the drawing shuts this off. Keep people and electricity away from the water,"
              + " draw the water off to a vessel with room, and call for help.");
    }
    return new Report.Emergency(
        FindingWords.of(wording, answered), FindingWords.seen(wording, answered), steps);
  }

  /** What a step brings about that wets a floor by itself: it comes last, and says so. */
  private Optional<String> harm(FirstStep step) {
    return step instanceof FirstStep.SwitchOff off
        ? wet.stream()
            .filter(answered -> answered.failure().equals(new Failure.CircuitTrips(off.circuit())))
            .map(
                answered ->
                    "Only if the water does not stop otherwise, because this alone wets a floor: "
                        + new VerdictSentence(wording).explanation(answered.outcome()))
            .findFirst()
        : Optional.empty();
  }

  private String sentence(FirstStep step) {
    return switch (step) {
      case FirstStep.ShutSupply supply ->
          "Shut " + supply(supply.supply()) + where(supply.supply()) + ".";
      case FirstStep.SwitchOff off ->
          "Switch off "
              + the(off.circuit())
              + " at the breaker"
              + breaker(off.circuit()).map(place -> " (" + place + ")").orElse("")
              + ", with dry hands: that stops "
              + Sentences.enumerate(off.parts().stream().map(this::the).toList())
              + ".";
      case FirstStep.ShutValve valve ->
          "Shut " + the(valve.valve()) + " in " + the(valve.run()) + where(valve.run()) + ".";
      case FirstStep.LetAirIn siphon ->
          "Let air into "
              + the(siphon.run())
              + " at its top, or lift its outlet out of the water: it runs back as a siphon.";
    };
  }

  /** "The house purified" is none that can be shut; a tap and a mains are. */
  private String supply(String id) {
    String name = the(id);
    return SHUT.stream().anyMatch(name.toLowerCase(Locale.ROOT)::contains)
        ? name
        : name + " supply";
  }

  /** All valves in one sentence: on a card there is no room for one each. */
  private Optional<String> valves(List<FirstStep> all) {
    List<String> valves =
        all.stream()
            .filter(FirstStep.ShutValve.class::isInstance)
            .map(FirstStep.ShutValve.class::cast)
            .map(valve -> the(valve.valve()) + " in " + the(valve.run()) + where(valve.run()))
            .toList();
    return valves.isEmpty()
        ? Optional.empty()
        : Optional.of("Shut " + Sentences.enumerate(valves) + ".");
  }

  /** Where it is, as far as the drawing says: in which place, and on which storey. */
  private String where(String id) {
    Optional<String> place = standsIn(id);
    Optional<String> storey = StoreyOf.element(wording.installation(), place.orElse(id));
    List<String> words =
        Stream.concat(place.stream(), storey.stream()).map(wording.names()::of).distinct().toList();
    return words.isEmpty() ? "" : " (" + String.join(", ", words) + ")";
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
