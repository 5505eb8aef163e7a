package dryfloor.app.view.learn;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.app.shipped.Example;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A course of guesses over the failures of an example. */
class CourseTest {

  private static Course course = new Course(List.of(), List.of());

  @BeforeAll
  static void answerTheExample() throws BaselineProblem {
    String text = new String(Example.FIRST_LOOK.content(), StandardCharsets.UTF_8);
    course =
        switch (InstallationFile.readText(text)) {
          case Reading.Read read ->
              Course.from(List.of(Sweep.everyFailure(read.installation(), 2, Progress.NONE)));
          case Reading.Rejected rejected ->
              throw new AssertionError(rejected.problems().toString());
        };
  }

  @Test
  void exercisesGetHarderAndEveryVerdictOccurs() {
    assertThat(course.exercises())
        .isSortedAccordingTo(Comparator.comparing(Exercise::difficulty))
        .hasSizeBetween(6, Course.LENGTH)
        .doesNotHaveDuplicates();
    assertThat(course.exercises().getFirst().difficulty())
        .isLessThan(course.exercises().getLast().difficulty());
    assertThat(course.exercises())
        .extracting(exercise -> exercise.outcome().verdict())
        .contains(Verdict.values());
  }

  @Test
  void theTruthEarnsAHundredPoints() {
    Course walked = course;
    while (!walked.isDone()) {
      walked = walked.with(Marking.of(walked.present(), truth(walked.present())));
    }

    assertThat(walked.marked()).allMatch(marking -> marking.points() == Course.FULL_MARKS);
    assertThat(walked.points()).isEqualTo(walked.possible());
  }

  @Test
  void aLevelFiveMillimetresOffIsRightAndFiftyOffEarnsNothing() {
    Exercise exercise = course.exercises().getLast();
    int number = moving(exercise).size();

    assertThat(off(exercise, 0.0049).levelPoints()).isEqualTo(Marking.FOR_LEVELS);
    assertThat(off(exercise, 0.0275).levelPoints())
        .as("half way from 5 mm to 50 mm, the others right")
        .isEqualTo((int) Math.round(Marking.FOR_LEVELS * (number - 0.5) / number));
    assertThat(off(exercise, -0.05).levelPoints())
        .isEqualTo((int) Math.round(Marking.FOR_LEVELS * (number - 1.0) / number));
  }

  @Test
  void leavingEveryLevelAloneEarnsNothingForThoseThatMoveFar() {
    Exercise exercise = course.exercises().getLast();

    Marking marking = Marking.of(exercise, new Guess(Map.of(), Verdict.DRY, Optional.empty()));

    assertThat(moving(exercise)).anyMatch(v -> Math.abs(v.levelAfter() - v.levelBefore()) > 0.05);
    assertThat(marking.levelPoints()).isLessThan(Marking.FOR_LEVELS);
    assertThat(marking.levels())
        .filteredOn(level -> Math.abs(level.truth() - level.before()) > 0.05)
        .allMatch(level -> level.share() == 0);
  }

  private static List<Outcome.VesselOutcome> moving(Exercise exercise) {
    return exercise.asked().stream()
        .filter(vessel -> Math.abs(vessel.levelAfter() - vessel.levelBefore()) > Marking.RIGHT)
        .toList();
  }

  @Test
  void sayingDryOfAWetFloorEarnsLevelsOnly() {
    Exercise wet =
        course.exercises().stream()
            .filter(exercise -> exercise.outcome().verdict() == Verdict.WET)
            .findFirst()
            .orElseThrow();
    Guess wrong = new Guess(truth(wet).levels(), Verdict.DRY, Optional.empty());

    Marking marking = Marking.of(wet, wrong);

    assertThat(marking.isVerdictRight()).isFalse();
    assertThat(marking.isFloorRight()).isFalse();
    assertThat(marking.points()).isEqualTo(Marking.FOR_LEVELS);
  }

  /** The truth, but for the first level that moves, which is so far off (m). */
  private static Marking off(Exercise exercise, double by) {
    Guess truth = truth(exercise);
    String first = moving(exercise).getFirst().id();
    Map<String, Double> levels =
        truth.levels().entrySet().stream()
            .collect(
                Collectors.toMap(
                    Map.Entry::getKey, e -> e.getValue() + (e.getKey().equals(first) ? by : 0)));
    return Marking.of(exercise, new Guess(levels, truth.verdict(), truth.floor()));
  }

  private static Guess truth(Exercise exercise) {
    Map<String, Double> levels =
        exercise.asked().stream()
            .collect(
                Collectors.toMap(Outcome.VesselOutcome::id, Outcome.VesselOutcome::levelAfter));
    Optional<String> wettest =
        exercise.outcome().floors().stream()
            .filter(floor -> floor.received() > 0)
            .max(Comparator.comparingDouble(Outcome.FloorOutcome::received))
            .map(Outcome.FloorOutcome::id);
    return new Guess(levels, exercise.outcome().verdict(), wettest);
  }
}
