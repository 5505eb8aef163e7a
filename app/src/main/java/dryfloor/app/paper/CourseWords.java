package dryfloor.app.paper;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Movement;
import dryfloor.app.report.MovementWords;
import dryfloor.app.report.Movements;
import dryfloor.app.report.NoteSentence;
import dryfloor.app.report.StoryDigest;
import dryfloor.app.report.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The failures of interest, each told in full. */
final class CourseWords {

  /** The worst of these verdicts are told, so many of each. */
  private static final int WET = 4;

  private static final int CAUGHT = 1;

  /** Less change of level than this (m) needs no plot. */
  static final double MOVES = 2e-3;

  private static final List<String> NAMES = List.of("a", "b", "c", "d", "e", "f", "g", "h");

  private final Wording wording;

  private CourseWords(Wording wording) {
    this.wording = wording;
  }

  static List<Report.Course> of(Question question) {
    CourseWords words = new CourseWords(question.wording());
    List<FailureResult.Answered> interesting = interesting(question.sweep());
    List<Report.Course> courses = new ArrayList<>();
    for (int i = 0; i < interesting.size(); i++) {
      courses.add(words.course(interesting.get(i), "course" + NAMES.get(i)));
    }
    return courses;
  }

  /** The power loss, and the worst of those that leave their vessels, no two with one outcome. */
  static List<FailureResult.Answered> interesting(SweepResult sweep) {
    List<FailureResult.Answered> all = new ArrayList<>();
    OwnerWords.powerLoss(sweep)
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .ifPresent(all::add);
    all.addAll(worst(sweep, Answer.WET, WET));
    all.addAll(worst(sweep, Answer.CAUGHT, CAUGHT));
    Set<Outcome> told = new HashSet<>();
    return all.stream().filter(answered -> told.add(answered.outcome())).toList();
  }

  private static List<FailureResult.Answered> worst(SweepResult sweep, Answer answer, int most) {
    Set<Outcome> told = new HashSet<>();
    return FindingWords.answered(sweep)
        .filter(answered -> Answer.of(answered) == answer)
        .filter(answered -> told.add(answered.outcome()))
        .limit(most)
        .toList();
  }

  private Report.Course course(FailureResult.Answered answered, String name) {
    Outcome outcome = answered.outcome();
    List<Movement> movements =
        Movements.of(outcome.ledger()).stream()
            .filter(movement -> wording.amounts().isWorthTelling(movement.moved()))
            .sorted(Comparator.comparingDouble(Movement::moved).reversed())
            .toList();
    NoteSentence notes = new NoteSentence(wording);
    return new Report.Course(
        FindingWords.of(wording, answered),
        new StoryDigest(wording)
            .of(outcome).stream()
                .map(moment -> new Report.Moment(moment.time(), moment.sentence()))
                .toList(),
        outcome.vessels().stream().map(this::level).toList(),
        plots(outcome, name),
        movements.isEmpty()
            ? Optional.empty()
            : Optional.of(Picture.of(WayPlot.of(wording, movements), name + "ways")),
        movements.stream().map(this::way).toList(),
        outcome.notes().stream().map(notes::of).toList());
  }

  private Report.Level level(Outcome.VesselOutcome vessel) {
    Amounts amounts = wording.amounts();
    return new Report.Level(
        wording.names().label(vessel.id()),
        amounts.level(vessel.levelBefore() - vessel.bottom()),
        amounts.level(vessel.levelAfter() - vessel.bottom()),
        amounts.level(Math.max(0, vessel.rim() - vessel.levelAfter())),
        amounts.level(vessel.highestLevel() - vessel.bottom()),
        amounts.volumeChange(vessel.volumeAfter() - vessel.volumeBefore()));
  }

  private List<Picture> plots(Outcome outcome, String name) {
    List<Picture> plots = new ArrayList<>();
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      if (LevelPlot.swing(outcome, vessel) > MOVES) {
        plots.add(Picture.of(LevelPlot.of(wording, outcome, vessel), name));
      }
    }
    return plots;
  }

  private Report.Way way(Movement movement) {
    return new Report.Way(
        wording.names().label(movement.from()),
        wording.names().label(movement.to()),
        MovementWords.way(wording, movement),
        wording.amounts().volume(movement.moved()));
  }
}
