package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Team;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How high the water of each vessel may stand, for less work than all limits: every vessel goes up
 * as far as it can be drawn and settles, and there the failures are run, a few at a time, those
 * first that bring its water closest to its rim today. With the first that is wrong it goes up
 * again, as far as that allows, until at the end of a way every failure is right that has anything
 * to do with it. So all of them are run once for each vessel, at the value that is told.
 */
final class HighestLevels {

  /** So many failures are run at the end of a way before it is looked whether it is the end. */
  private static final int A_FEW = 12;

  /** What the progress counts up to. */
  private static final int WHOLE = 1000;

  private final Today today;
  private final int threads;
  private final Progress progress;

  HighestLevels(Today today, int threads, Progress progress) {
    this.today = today;
    this.threads = threads;
    this.progress = progress;
  }

  /** One failure to be run with one vessel filled to the end of its way. */
  private record Question(Trial end, Failure failure) {}

  /** The marks of these vessels, by id. */
  Map<String, Double> of(Choices choices, List<Property.RunningLevel> levels) {
    List<Climb> climbs = levels.stream().map(level -> new Climb(choices, level)).toList();
    List<Climb> underWay = climbs;
    int told = 0;
    while (!underWay.isEmpty() && !progress.cancelled()) {
      List<Climb> now = underWay;
      Team.share(now.size(), threads, Progress.NONE, i -> now.get(i).climb());
      List<Question> few = now.stream().flatMap(Climb::next).toList();
      Team.share(few.size(), threads, Progress.NONE, i -> run(few.get(i)));
      underWay = now.stream().filter(Climb::goesOn).toList();
      told = Math.max(told, (int) (WHOLE * share(climbs)));
      progress.finished(told, WHOLE);
    }
    Map<String, Double> marks = new TreeMap<>();
    climbs.forEach(climb -> climb.mark().ifPresent(mark -> marks.put(climb.level.of(), mark)));
    return marks;
  }

  private static void run(Question question) {
    question.end().wrong(question.failure());
  }

  private static double share(List<Climb> climbs) {
    return climbs.stream().mapToDouble(Climb::proven).average().orElse(1);
  }

  /** The way up of one vessel. */
  private final class Climb {

    private final Property.RunningLevel level;
    private final LimitSearch search;
    private final Map<Failure, Double> leftToday = new HashMap<>();
    private final Set<Failure> asked = new LinkedHashSet<>();
    private Optional<Trial> end = Optional.empty();
    private boolean climbing = true;

    Climb(Choices choices, Property.RunningLevel level) {
      this.level = level;
      this.search = new LimitSearch(choices, level, today, Progress.NONE::cancelled);
      for (FailureResult result : today.results().results()) {
        if (result instanceof FailureResult.Answered answered) {
          leftToday.put(answered.failure(), left(answered.outcome()));
        }
      }
    }

    private double left(Outcome outcome) {
      return outcome.vessels().stream()
          .filter(vessel -> vessel.id().equals(level.of()))
          .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
          .sum();
    }

    /** Goes up with what it knows; stays where it is if it knows no more than before. */
    void climb() {
      if (climbing) {
        end = search.highest(asked);
      }
    }

    /** What to run next at the end of the way. */
    Stream<Question> next() {
      return unknown().stream()
          .limit(A_FEW)
          .map(failure -> new Question(end.orElseThrow(), failure));
    }

    /** Whether there is more to do: to climb again, or to run more where it is. */
    boolean goesOn() {
      climbing = asked.addAll(wrongAtTheEnd());
      return climbing || !unknown().isEmpty();
    }

    private List<Failure> wrongAtTheEnd() {
      return end.map(there -> there.knownWrong(today.notWrong(there.failures()))).orElse(List.of());
    }

    /** What is not known at the end of the way; nearest to the rim first. */
    private List<Failure> unknown() {
      List<Failure> order = new ArrayList<>();
      end.ifPresent(there -> order.addAll(there.unknown(today.notWrong(there.failures()))));
      order.sort((a, b) -> Double.compare(leftToday(a), leftToday(b)));
      return order;
    }

    /** Nothing is known of what only the changed drawing can have, so that comes first. */
    private double leftToday(Failure failure) {
      return leftToday.getOrDefault(failure, 0.0);
    }

    /** How much of what there is to run at the end of the way is done. */
    double proven() {
      double all = end.map(there -> there.failures().size()).orElse(0);
      return all == 0 ? 1 : 1 - unknown().size() / all;
    }

    /** Where the water settles at the end of the way; none where it may stand at the rim. */
    Optional<Double> mark() {
      return end.filter(there -> !search.isMost(there))
          .flatMap(Trial::inquiry)
          .map(inquiry -> Trial.settled(level, inquiry.normal()));
    }
  }
}
