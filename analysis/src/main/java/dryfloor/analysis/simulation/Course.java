package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.StoryEvent;
import java.util.List;
import java.util.Set;

/** A simulation that came to its end: where it began, where it ended and what was taken down. */
public final class Course {

  private final FlowNetwork network;
  private final State state;
  final double[] volumesBefore;
  final double[] saltBefore;
  final Recorder recorder;
  final Salt salt;
  private final List<StoryEvent> story;
  private final Ending ending;
  private final List<Note> notes;

  /** What comes in from all supplies at the end (m³/s). */
  final double inflow;

  /** Up to when water and salt have been counted (s). */
  final double countedUntil;

  /** Runs that carry water at the end. */
  final Set<String> carrying;

  private final Set<String> doubtfulDrips;

  Course(
      FlowNetwork network,
      State state,
      double[] volumesBefore,
      double[] saltBefore,
      Recorder recorder,
      Salt salt,
      List<StoryEvent> story,
      Ending ending,
      List<Note> notes,
      double inflow,
      double countedUntil,
      Set<String> carrying,
      Set<String> doubtfulDrips) {
    this.doubtfulDrips = Set.copyOf(doubtfulDrips);
    this.countedUntil = countedUntil;
    this.carrying = Set.copyOf(carrying);
    this.notes = List.copyOf(notes);
    this.inflow = inflow;
    this.network = network;
    this.state = state;
    this.volumesBefore = volumesBefore;
    this.saltBefore = saltBefore;
    this.recorder = recorder;
    this.salt = salt;
    this.story = List.copyOf(story);
    this.ending = ending;
  }

  public FlowNetwork network() {
    return network;
  }

  State state() {
    return state;
  }

  List<StoryEvent> story() {
    return story;
  }

  /**
   * Whether a siphon break ever mattered: whether it stood open to the air with less than its
   * pressure behind it, at any moment that was looked at. If not, all would be the same without it.
   */
  public boolean everOpened(String siphonBreak) {
    return state.openedHoles.contains(siphonBreak);
  }

  /**
   * Runs of which nobody knows whether they would have filled at some moment: water fell in over
   * their drowned lip too fast for air to pass freely beside it, and too slowly to carry the air
   * along for certain.
   */
  public Set<String> doubtfulPrimings() {
    return Set.copyOf(state.doubtfulPrimings);
  }

  /**
   * Drains that run full where they leak at the end, so that their hole draws air: it would drip if
   * they did not.
   */
  public Set<String> doubtfulDrips() {
    return doubtfulDrips;
  }

  /** What must be known besides. */
  List<Note> notes() {
    return notes;
  }

  public Ending ending() {
    return ending;
  }
}
