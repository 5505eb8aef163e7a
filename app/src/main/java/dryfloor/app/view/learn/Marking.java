package dryfloor.app.view.learn;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a guess is worth, with the reasons: up to {@link #FOR_VERDICT} points for where the water
 * goes, {@link #FOR_FLOOR} for the floor, and the rest of a hundred for the levels.
 *
 * @param exercise that was guessed
 * @param guess of the trainee
 * @param levels guessed and true, in the order asked
 */
public record Marking(Exercise exercise, Guess guess, List<LevelMark> levels) {

  /** Points for the right verdict. */
  public static final int FOR_VERDICT = 40;

  /** Points for the right floor, or for knowing that none gets wet. */
  public static final int FOR_FLOOR = 20;

  /** Points for all levels. */
  public static final int FOR_LEVELS = 40;

  /** The tolerance of a mark on glass on site (m), as the trade has it: common practice. */
  public static final double RIGHT = 5e-3;

  /** Further off than this earns nothing (m). */
  public static final double WRONG = 50e-3;

  public Marking {
    levels = List.copyOf(levels);
  }

  /**
   * One level, guessed and true.
   *
   * @param vessel id of the vessel
   * @param before level in normal operation (m, elevation)
   * @param guessed final level (m, elevation)
   * @param truth final level (m, elevation)
   */
  public record LevelMark(String vessel, double before, double guessed, double truth) {

    /** Guessed minus true (m). */
    public double difference() {
      return guessed - truth;
    }

    /** Whether it is as right as anybody could mark it on glass. */
    public boolean isRight() {
      return Math.abs(difference()) <= RIGHT;
    }

    /** Whether it moves or was thought to; what rightly was left alone earns nothing. */
    boolean counts() {
      return Math.abs(truth - before) > RIGHT || Math.abs(guessed - before) > RIGHT;
    }

    /** From 1 for right down to 0 for far off, straight in between. */
    double share() {
      return Math.clamp((WRONG - Math.abs(difference())) / (WRONG - RIGHT), 0, 1);
    }
  }

  /** Marks a guess; a vessel that nothing was said of is taken to stay where it was. */
  public static Marking of(Exercise exercise, Guess guess) {
    List<LevelMark> marks =
        exercise.asked().stream()
            .map(
                vessel ->
                    new LevelMark(
                        vessel.id(),
                        vessel.levelBefore(),
                        guess.levels().getOrDefault(vessel.id(), vessel.levelBefore()),
                        vessel.levelAfter()))
            .toList();
    return new Marking(exercise, guess, marks);
  }

  public boolean isVerdictRight() {
    return guess.verdict() == exercise.outcome().verdict();
  }

  /** The floor that gets most of the water; none where no floor gets wet. */
  public Optional<String> wettest() {
    Outcome outcome = exercise.outcome();
    return outcome.verdict() == Verdict.WET
        ? outcome.floors().stream()
            .filter(floor -> floor.received() > 0)
            .max(Comparator.comparingDouble(Outcome.FloorOutcome::received))
            .map(Outcome.FloorOutcome::id)
        : Optional.empty();
  }

  /** Whether the floor is right; naming any floor that gets water at all counts. */
  public boolean isFloorRight() {
    return guess.floor().isEmpty()
        ? wettest().isEmpty()
        : exercise.outcome().floors().stream()
            .anyMatch(f -> f.id().equals(guess.floor().get()) && f.received() > 0);
  }

  /** Points for the levels that move or were thought to. */
  public int levelPoints() {
    double share =
        levels.stream().filter(LevelMark::counts).mapToDouble(LevelMark::share).average().orElse(1);
    return (int) Math.round(FOR_LEVELS * share);
  }

  /** Points in all, of a hundred. */
  public int points() {
    return (isVerdictRight() ? FOR_VERDICT : 0) + (isFloorRight() ? FOR_FLOOR : 0) + levelPoints();
  }
}
