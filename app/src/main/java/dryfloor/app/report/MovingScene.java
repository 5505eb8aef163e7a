package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.drawing.Scene;
import java.util.List;

/**
 * A failure as it can be played: how it ends, and how things stand at any moment before. What does
 * not move is put into words once.
 */
public final class MovingScene {

  private final Wording wording;
  private final Outcome outcome;
  private final SceneWords.Occasion occasion;
  private final Scene end;
  private final List<StoryDigest.Moment> story;

  private MovingScene(Wording wording, Scene end, Outcome outcome, SceneWords.Occasion occasion) {
    this.wording = wording;
    this.occasion = occasion;
    this.outcome = outcome;
    this.end = end;
    this.story = new StoryDigest(wording).of(outcome);
  }

  /**
   * The scenes of an outcome.
   *
   * @param title name of the failure, or that all is well
   * @param failed ids of the components that failed
   */
  public static MovingScene of(
      Wording wording, String title, List<String> failed, Outcome outcome) {
    return new MovingScene(
        wording,
        SceneWords.of(wording, title, failed, outcome),
        outcome,
        SceneWords.Occasion.FAILURE);
  }

  /**
   * The scenes of normal operation.
   *
   * @param title of the pictures
   * @param marked ids of components that are pointed out
   */
  public static MovingScene ofNormal(
      Wording wording, String title, List<String> marked, Outcome normal) {
    return new MovingScene(
        wording,
        SceneWords.ofNormal(wording, title, marked, normal),
        normal,
        SceneWords.Occasion.ALL_IS_WELL);
  }

  /** How it ends. */
  public Scene end() {
    return end;
  }

  /** How things stand at a time (s after the failure); infinite for the end. */
  public Scene at(double time) {
    return Double.isInfinite(time) ? end : SceneWords.at(time, wording, end, outcome, occasion);
  }

  /** The whole story, each sentence with its event. */
  public List<StoryDigest.Moment> story() {
    return story;
  }

  /** When it is over (s): the last recorded moment, or the last event if that is later. */
  public double duration() {
    double lastEvent = outcome.story().isEmpty() ? 0 : outcome.story().getLast().time();
    double lastLevel = outcome.trajectory().time(outcome.trajectory().moments() - 1);
    return Math.max(lastEvent, lastLevel);
  }

  public Outcome outcome() {
    return outcome;
  }

  public Wording wording() {
    return wording;
  }
}
