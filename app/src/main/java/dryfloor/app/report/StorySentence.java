package dryfloor.app.report;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.model.element.Control;

/** One event of the story as a sentence for everybody. */
public final class StorySentence {

  private final Wording wording;
  private final Circulating circulating;

  /** Sentences about what this installation does in an outcome. */
  public StorySentence(Wording wording, Outcome outcome) {
    this.wording = wording;
    this.circulating = Circulating.in(outcome);
  }

  /** The sentence, without its time. */
  public String of(StoryEvent event) {
    return switch (event.what()) {
      case POWER_LOST -> "Power is lost at " + the(event.subject()) + ".";
      case POWER_BACK -> "Power is back at " + the(event.subject()) + ".";
      case STOPS -> subject(event) + " stops" + because(event, ": ", " has switched it off") + ".";
      case STARTS -> subject(event) + " starts" + because(event, ": ", " calls for it") + ".";
      case OPENS -> subject(event) + " opens.";
      case CLOSES -> subject(event) + " closes.";
      case ACTS -> subject(event) + " trips" + onWater(event) + lockedOut(event) + ".";
      case LETS_GO -> subject(event) + " resets" + onWater(event) + ".";
      case RUNS_BACKWARDS ->
          "Water runs backwards through " + the(event.subject()) + into(event) + ".";
      case TAKES_AIR_AT_OPENING ->
          "Air gets into " + the(event.subject()) + throughOpening(event) + ".";
      case SIPHON_BREAKS ->
          subject(event) + " lets air in" + because(event, " and stops the flow in ", "") + ".";
      case COLUMN_PARTS ->
          "The water in "
              + the(event.subject())
              + " parts at the crest: no siphon lifts it that high.";
      case RUN_EMPTIES -> subject(event) + " empties itself" + into(event) + allTold(event) + ".";
      case RUN_PRIMES -> subject(event) + " fills and carries water over its crest.";
      case SUCKS_AIR ->
          subject(event) + " sucks air" + because(event, ": ", " has fallen to its inlet") + ".";
      case LOSES_PRIME ->
          subject(event) + " has lost its water and will not start pumping again by itself.";
      case RUNS_OUT ->
          "What is still on its way runs out through "
              + the(event.subject())
              + into(event)
              + allTold(event)
              + ".";
      case BEGINS_TO_FLOW ->
          subject(event) + " begins to carry water" + into(event) + inAll(event) + ".";
      case SPILLS ->
          subject(event)
              + " stands at its rim and begins to spill"
              + into(event)
              + inAll(event)
              + ".";
      case FLOODED ->
          "The water"
              + (event.other().isEmpty() ? "" : Landing.on(wording, event.other()))
              + " reaches the rim of "
              + the(event.subject())
              + " and runs into it"
              + inAll(event)
              + ".";
      case STOPS_SPILLING -> subject(event) + " stops spilling" + into(event) + inAll(event) + ".";
      case LEAKS -> leaks(event) + into(event) + inAll(event) + ".";
      case BURSTS -> subject(event) + " bursts and empties" + into(event) + allTold(event) + ".";
      case CATCHES -> subject(event) + " catches its first water" + inAll(event) + ".";
      case FLOOR_WET -> subject(event) + " gets wet" + inAll(event) + ".";
      case SILL_REACHED ->
          "The water on "
              + the(event.subject())
              + " reaches the sill and flows over it"
              + into(event)
              + inAll(event)
              + ".";
      case EMPTY -> subject(event) + " has run empty.";
      case POURED -> "Somebody tops up " + the(event.subject()) + " by hand" + allTold(event) + ".";
      case TAKEN ->
          "Somebody takes water out of " + the(event.subject()) + " by hand" + allTold(event) + ".";
      case TAKEN_IN_PART ->
          "Somebody takes water out of "
              + the(event.subject())
              + " by hand, less than was meant"
              + (event.volume().isPresent() ? allTold(event) + " is all that can be reached" : "")
              + ".";
      case FAILS -> failure(event) + ".";
      case PUT_RIGHT -> "Put right: " + failure(event) + ".";
    };
  }

  private String failure(StoryEvent event) {
    return FailureCatalogue.find(wording.installation(), event.subject())
        .map(failure -> FailureNames.name(failure, wording.installation()))
        .orElse(event.subject());
  }

  private String onWater(StoryEvent event) {
    return event.other().isEmpty() ? "" : " on the water" + Landing.on(wording, event.other());
  }

  private String lockedOut(StoryEvent event) {
    boolean locks =
        wording.installation().controls().stream()
            .filter(control -> control.id().equals(event.subject()))
            .anyMatch(
                control ->
                    control instanceof Control.LevelSwitch levelSwitch
                        && levelSwitch.action().locksOut());
    return locks ? " and locks out until a person resets it" : "";
  }

  /** An end that lies open over a floor was never covered. */
  private String throughOpening(StoryEvent event) {
    if (event.other().isEmpty() || event.other().equals(event.subject())) {
      return "";
    }
    return Landing.isFloor(wording, event.other())
        ? " through its open end over " + the(event.other())
        : ": its opening in " + the(event.other()) + " is uncovered";
  }

  private String leaks(StoryEvent event) {
    boolean run =
        wording.installation().runs().stream().anyMatch(r -> r.id().equals(event.subject()));
    boolean stirs =
        wording.installation().circulationPumps().stream()
            .anyMatch(pump -> pump.id().equals(event.subject()));
    return run
        ? "Water runs out of " + the(event.subject())
        : subject(event) + (stirs ? " throws water out" : " leaks");
  }

  private String subject(StoryEvent event) {
    return wording.names().theAtStart(event.subject());
  }

  private String the(String id) {
    return wording.names().the(id);
  }

  private String because(StoryEvent event, String before, String after) {
    return event.other().isEmpty() ? "" : before + the(event.other()) + after;
  }

  /** A run that has come apart takes water from its other half: that goes into nothing new. */
  private String into(StoryEvent event) {
    return event.other().isEmpty() || event.other().equals(event.subject())
        ? ""
        : Landing.into(wording, event.other());
  }

  private String inAll(StoryEvent event) {
    return event.volume().stream()
        .mapToObj(volume -> ": " + inAll(volume, event.time()))
        .findFirst()
        .orElse("");
  }

  private String inAll(double volume, double since) {
    return circulating.goesRound(volume, since)
        ? wording.amounts().flow(circulating.rate(volume, since))
            + " on average, the same water again and again"
        : wording.amounts().volume(volume) + " in all";
  }

  private String allTold(StoryEvent event) {
    return event.volume().isPresent()
        ? ": " + wording.amounts().volume(event.volume().getAsDouble())
        : "";
  }
}
