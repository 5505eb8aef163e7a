package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The story as it is told: what happens over and over is told twice, and how often it goes on. */
public final class StoryDigest {

  private static final int TOLD = 2;

  /** Up to so many times are told one by one. */
  private static final int FEW = 4;

  /** From without: these begin something new. */
  private static final Set<StoryEvent.What> TURNS =
      EnumSet.of(
          StoryEvent.What.POWER_LOST,
          StoryEvent.What.POWER_BACK,
          StoryEvent.What.POURED,
          StoryEvent.What.TAKEN,
          StoryEvent.What.TAKEN_IN_PART,
          StoryEvent.What.FAILS,
          StoryEvent.What.PUT_RIGHT);

  /** Later than this (s) a time is told without its seconds. */
  private static final double LATE = 3600;

  /** What comes sooner than this (s) happens at the same time. */
  private static final double NEXT = 0.5;

  private final Wording wording;
  private final Amounts amounts;

  /** Stories about this installation. */
  public StoryDigest(Wording wording) {
    this.wording = wording;
    this.amounts = wording.amounts();
  }

  /**
   * A moment of the story.
   *
   * @param time as it is spoken
   * @param event that is told
   */
  public record Moment(String time, String sentence, StoryEvent event) {}

  /** What makes two events the same. */
  private record Kind(StoryEvent.What what, String subject, String other) {

    static Kind of(StoryEvent event) {
      return new Kind(event.what(), event.subject(), event.other());
    }
  }

  /** The moments worth telling, in order. */
  public List<Moment> of(Outcome outcome) {
    return of(outcome, event -> true);
  }

  /** The same of some events only. */
  List<Moment> of(Outcome outcome, Predicate<StoryEvent> told) {
    return moments(
        outcome.story().stream().filter(told).toList(), new StorySentence(wording, outcome));
  }

  private List<Moment> moments(List<StoryEvent> story, StorySentence sentence) {
    Map<Kind, List<StoryEvent>> alike = story.stream().collect(Collectors.groupingBy(Kind::of));
    Map<Kind, Integer> told = new HashMap<>();
    List<Told> moments = new ArrayList<>();
    double turn = 0;
    for (StoryEvent event : story) {
      turn = TURNS.contains(event.what()) ? event.time() : turn;
      List<StoryEvent> all = alike.getOrDefault(Kind.of(event), List.of());
      int number = told.merge(Kind.of(event), 1, Integer::sum);
      if (all.size() <= FEW || number <= TOLD) {
        boolean last = all.size() > FEW && number == TOLD;
        moments.add(
            new Told(event, time(event, turn), sentence.of(event), last ? further(all) : ""));
      }
    }
    return onceForAll(moments);
  }

  /** Late times are rounded; what follows soon on a turn of events is told from there. */
  private String time(StoryEvent event, double turn) {
    double since = event.time() - turn;
    return turn >= LATE && since >= NEXT && since < LATE
        ? amounts.time(turn) + " + " + amounts.time(since)
        : amounts.time(event.time());
  }

  /** A moment and how often it happens again. */
  private record Told(StoryEvent event, String time, String sentence, String again) {}

  /** What follows in one breath, and happens again as often, is said to do so once. */
  private static List<Moment> onceForAll(List<Told> told) {
    List<Moment> moments = new ArrayList<>();
    boolean goesOn = false;
    for (int i = 0; i < told.size(); i++) {
      Told here = told.get(i);
      boolean next =
          i + 1 < told.size()
              && told.get(i + 1).time().equals(here.time())
              && told.get(i + 1).again().equals(here.again());
      String again = here.again().isEmpty() ? "" : (goesOn ? " All this" : " This") + here.again();
      moments.add(new Moment(here.time(), here.sentence() + (next ? "" : again), here.event()));
      goesOn = next;
    }
    return moments;
  }

  private String further(List<StoryEvent> all) {
    return " happens "
        + (all.size() - TOLD)
        + " more times, the last time after "
        + amounts.time(all.getLast().time())
        + ".";
  }
}
