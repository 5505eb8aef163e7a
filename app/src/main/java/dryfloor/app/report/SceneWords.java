package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Style;
import dryfloor.model.element.Floor;
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

  /** Less than this (m) is no change of level. */
  private static final double SHOWS = 5e-4;

  /** Less than this (m) nobody reads off a vessel. */
  private static final double RULER = 1e-3;

  private final Wording wording;
  private final Outcome outcome;
  private final Amounts amounts;
  private final OptionalDouble moment;
  private final Occasion occasion;

  private SceneWords(Wording wording, Outcome outcome, OptionalDouble moment, Occasion occasion) {
    this.wording = wording;
    this.outcome = outcome;
    this.amounts = wording.amounts();
    this.moment = moment;
    this.occasion = occasion;
  }

  /** What a scene is of. */
  enum Occasion {
    FAILURE,
    /** Levels settle from where they are drawn; what that takes in litres is of no interest. */
    ALL_IS_WELL
  }

  /**
   * The scene that an outcome ends with.
   *
   * @param title name of the failure, or that all is well
   * @param failed ids of the components that failed
   */
  public static Scene of(Wording wording, String title, List<String> failed, Outcome outcome) {
    return new SceneWords(wording, outcome, OptionalDouble.empty(), Occasion.FAILURE)
        .scene(title, failed, new SceneFlows(wording).of(outcome.ledger()));
  }

  /**
   * Normal operation as it goes on for good: its arrows say how much flows, for how much has flowed
   * until it settled means nothing to anybody.
   *
   * @param title of the picture
   * @param marked ids of components that are pointed out
   */
  public static Scene ofNormal(Wording wording, String title, List<String> marked, Outcome normal) {
    return new SceneWords(wording, normal, OptionalDouble.empty(), Occasion.ALL_IS_WELL)
        .scene(
            title,
            marked,
            new SceneFlows(wording).of(normal.trajectory().flowsAt(Double.POSITIVE_INFINITY)));
  }

  /**
   * The same scene at a moment on the way (s after the failure): levels as they stand then, floors
   * that are wet by then, parts in the state that they have come to, and what flows.
   */
  static Scene at(double moment, Wording wording, Scene end, Outcome outcome, Occasion occasion) {
    return new SceneWords(wording, outcome, OptionalDouble.of(moment), occasion)
        .onTheWayTo(end, moment);
  }

  private Scene onTheWayTo(Scene end, double time) {
    return new Scene(
        end.title(),
        end.subtitle(),
        end.sign(),
        end.verdict(),
        end.sentence(),
        waters(),
        wet(),
        new SceneFlows(wording).of(outcome.trajectory().flowsAt(time)),
        states(end.failed()),
        end.failed(),
        end.story(),
        end.levels(),
        end.heights(),
        end.closing());
  }

  private boolean hasHappened(double time) {
    return moment.isEmpty() || time <= moment.getAsDouble();
  }

  private Scene scene(String title, List<String> failed, List<Scene.Flow> flows) {
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
        flows,
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

  /** What became of a vessel's water, at the end in litres, on the way by how its level stands. */
  private String note(Outcome.VesselOutcome vessel) {
    return switch (occasion) {
      case ALL_IS_WELL -> settlingNote(vessel, level(vessel));
      case FAILURE -> moment.isEmpty() ? finalNote(vessel) : presentNote(vessel, level(vessel));
    };
  }

  /** Only what a ruler shows is a change from the level that is drawn. */
  private String settlingNote(Outcome.VesselOutcome vessel, double level) {
    if (level - vessel.bottom() < SHOWS) {
      return "";
    }
    double change = level - vessel.levelBefore();
    String settled = Math.abs(change) < RULER ? "" : amounts.levelChange(change) + " from as drawn";
    return (settled + belowRim(vessel.rim() - level)).strip();
  }

  private String presentNote(Outcome.VesselOutcome vessel, double level) {
    double change = level - vessel.levelBefore();
    if (level - vessel.bottom() < SHOWS && Math.abs(change) < SHOWS) {
      return "";
    }
    String moved = Math.abs(change) < SHOWS ? "no change" : amounts.levelChange(change);
    return moved + belowRim(vessel.rim() - level);
  }

  private String belowRim(double left) {
    return left > SHOWS ? "\n" + amounts.level(left) + " below rim" : "\nfull to the rim";
  }

  private double level(Outcome.VesselOutcome vessel) {
    return moment.isEmpty()
        ? vessel.levelAfter()
        : outcome.trajectory().levelAt(moment.getAsDouble(), vessel.id());
  }

  private String finalNote(Outcome.VesselOutcome vessel) {
    double gained = vessel.volumeAfter() - vessel.volumeBefore();
    String change = !amounts.isWorthTelling(gained) ? "no change" : amounts.volumeChange(gained);
    double left = vessel.rim() - vessel.levelAfter();
    if (!amounts.isWorthTelling(vessel.volumeAfter())) {
      return amounts.isWorthTelling(gained) ? change + ", empty" : "";
    }
    return change + belowRim(left);
  }

  private Map<String, String> wet() {
    Map<String, String> wet = new HashMap<>();
    for (Outcome.FloorOutcome floor : outcome.floors()) {
      if ((floor.received() > 0 || floor.firstWet().isPresent())
          && hasHappened(floor.firstWet().orElse(0))) {
        wet.put(floor.id(), "WET  " + wording.names().label(floor.id()) + amount(floor));
      }
    }
    return wet;
  }

  /** How much there is of it at the end; on the way only how deep it stands. */
  private String amount(Outcome.FloorOutcome floor) {
    if (moment.isPresent()) {
      double level = outcome.trajectory().levelAt(moment.getAsDouble(), floor.id());
      double depth = level - elevation(floor.id());
      return depth >= SHOWS ? ": " + amounts.level(depth) + " deep" : "";
    }
    String depth = floor.depth() >= SHOWS ? ", " + amounts.level(floor.depth()) + " deep" : "";
    boolean ranOff = amounts.isWorthTelling(floor.received() - floor.volume());
    String left = ranOff ? ", " + amounts.volume(floor.volume()) + " left" : "";
    return ": " + amounts.volume(floor.received()) + left + depth;
  }

  private double elevation(String floor) {
    return wording.installation().floors().stream()
        .filter(f -> f.id().equals(floor))
        .mapToDouble(Floor::elevation)
        .findFirst()
        .orElseThrow();
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
    List<StoryDigest.Moment> all = digest.of(outcome);
    List<StoryDigest.Moment> told =
        all.size() <= ROOM ? all : digest.of(outcome, PictureStory::isTold);
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
