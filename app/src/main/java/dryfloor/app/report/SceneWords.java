package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Style;
import dryfloor.model.part.Part;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Puts an outcome into the words and numbers of a picture. */
public final class SceneWords {

  /** So many moments have room beside a picture; of longer stories only the turns are told. */
  private static final int ROOM = 14;

  private final Wording wording;
  private final Outcome outcome;
  private final Amounts amounts;
  private final OptionalDouble moment;

  private SceneWords(Wording wording, Outcome outcome, OptionalDouble moment) {
    this.wording = wording;
    this.outcome = outcome;
    this.amounts = wording.amounts();
    this.moment = moment;
  }

  /**
   * The scene that an outcome ends with.
   *
   * @param title name of the failure, or that all is well
   * @param failed ids of the components that failed
   */
  public static Scene of(Wording wording, String title, List<String> failed, Outcome outcome) {
    return new SceneWords(wording, outcome, OptionalDouble.empty()).scene(title, failed);
  }

  /**
   * The scene at a moment on the way (s after the failure): levels as they stand then, floors that
   * are wet by then, parts in the state that they have come to.
   */
  public static Scene at(
      double moment, Wording wording, String title, List<String> failed, Outcome outcome) {
    return new SceneWords(wording, outcome, OptionalDouble.of(moment)).scene(title, failed);
  }

  private boolean hasHappened(double time) {
    return moment.isEmpty() || time <= moment.getAsDouble();
  }

  private Scene scene(String title, List<String> failed) {
    Answer answer = Answer.of(outcome);
    Set<String> failedIds = mostExact(failed);
    return new Scene(
        wording.installation().name(),
        title,
        answer.sign(true),
        style(answer),
        new VerdictSentence(wording).of(outcome),
        waters(),
        wet(),
        new SceneFlows(wording).of(outcome.ledger()),
        states(failedIds),
        failedIds,
        story(),
        outcome.vessels().stream().map(this::levelLine).toList(),
        new SceneHeights(amounts),
        Cautions.STATEMENT);
  }

  /** A run is not marked where one of its parts is. */
  private Set<String> mostExact(List<String> failed) {
    Set<String> exact = new HashSet<>(failed);
    wording.installation().runs().stream()
        .filter(run -> run.parts().stream().map(Part::id).anyMatch(failed::contains))
        .forEach(run -> exact.remove(run.id()));
    return exact;
  }

  private static Style style(Answer answer) {
    return switch (answer) {
      case WET -> Style.WET_TEXT;
      case CAUGHT -> Style.CAUGHT_TEXT;
      case DRY -> Style.DRY_TEXT;
      case NO_ANSWER, SKIPPED -> Style.UNKNOWN_TEXT;
    };
  }

  private Map<String, Scene.Water> waters() {
    Map<String, Scene.Water> waters = new HashMap<>();
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      waters.put(
          vessel.id(),
          new Scene.Water(
              vessel.levelBefore(),
              level(vessel),
              wording.names().label(vessel.id()),
              note(vessel)));
    }
    return waters;
  }

  private double level(Outcome.VesselOutcome vessel) {
    return moment.isEmpty()
        ? vessel.levelAfter()
        : outcome.trajectory().levelAt(moment.getAsDouble(), vessel.id());
  }

  private String note(Outcome.VesselOutcome vessel) {
    double gained = vessel.volumeAfter() - vessel.volumeBefore();
    String change =
        !amounts.isWorthTelling(gained)
            ? "no change"
            : amounts.volumeChange(gained).replace("-", "−");
    double left = vessel.rim() - vessel.levelAfter();
    if (!amounts.isWorthTelling(vessel.volumeAfter())) {
      return amounts.isWorthTelling(gained) ? change + ", empty" : "";
    }
    return change + (left > 5e-4 ? "\n" + amounts.level(left) + " below rim" : "\nfull to the rim");
  }

  private Map<String, String> wet() {
    Map<String, String> wet = new HashMap<>();
    for (Outcome.FloorOutcome floor : outcome.floors()) {
      if ((floor.received() > 0 || floor.firstWet().isPresent())
          && hasHappened(floor.firstWet().orElse(0))) {
        String depth = floor.depth() >= 5e-4 ? ", " + amounts.level(floor.depth()) + " deep" : "";
        wet.put(
            floor.id(),
            "WET  "
                + wording.names().label(floor.id())
                + ": "
                + amounts.volume(floor.received())
                + depth);
      }
    }
    return wet;
  }

  /** What became of the parts; the last word about each counts. */
  private Map<String, String> states(Set<String> failed) {
    Map<String, String> states = new HashMap<>();
    wording
        .installation()
        .supplies()
        .forEach(s -> states.put(s.id(), wording.names().label(s.id())));
    wording.installation().drains().forEach(d -> states.put(d.id(), wording.names().label(d.id())));
    failed.forEach(id -> states.put(id, wording.names().label(id)));
    for (StoryEvent event : outcome.story().stream().filter(e -> hasHappened(e.time())).toList()) {
      PartState.after(event)
          .ifPresent(
              state ->
                  states.put(
                      event.subject(), wording.names().label(event.subject()) + " " + state));
    }
    return states;
  }

  private List<Scene.Moment> story() {
    StoryDigest digest = new StoryDigest(wording);
    List<StoryDigest.Moment> all = digest.of(outcome.story());
    List<StoryDigest.Moment> told =
        all.size() <= ROOM
            ? all
            : digest.of(outcome.story().stream().filter(PictureStory::isTold).toList());
    return told.stream().map(moment -> new Scene.Moment(moment.time(), moment.sentence())).toList();
  }

  private Scene.LevelLine levelLine(Outcome.VesselOutcome vessel) {
    return new Scene.LevelLine(
        wording.names().label(vessel.id()),
        amounts.level(vessel.levelBefore() - vessel.bottom()),
        amounts.level(vessel.levelAfter() - vessel.bottom()),
        amounts.level(vessel.rim() - vessel.levelAfter()));
  }
}
