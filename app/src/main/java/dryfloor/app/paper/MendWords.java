package dryfloor.app.paper;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.Harm;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.app.report.RemedyWords;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.Wording;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Optional;

/**
 * What is to be done against a failure: common practice, and with it the sizes that the answers
 * give for this installation, so that nobody has to guess them.
 */
final class MendWords {

  /** So many changes that were found are told; the others would say no more. */
  private static final int TOLD = 2;

  /** Who rises by less than levels on site are off (m) needs no mark to be told. */
  private static final double RISES = Rehearsal.TOLERANCE;

  private final Question question;
  private final Wording wording;

  MendWords(Question question) {
    this.question = question;
    this.wording = question.wording();
  }

  /** Common practice, and what was worked out. */
  String action(Failure failure, Optional<Outcome> outcome) {
    String practice =
        FailureNames.remedy(
            failure,
            wording.installation(),
            outcome.map(MendWords::harm).orElse(Harm.REACHES_A_FLOOR));
    return found(failure)
        .or(() -> outcome.flatMap(this::size))
        .map(sentence -> practice + ". " + sentence)
        .orElse(practice);
  }

  private static Harm harm(Outcome outcome) {
    return switch (outcome.verdict()) {
      case DRY -> Harm.NOTHING_LEAVES;
      case CAUGHT -> Harm.CAUGHT;
      case WET -> Harm.REACHES_A_FLOOR;
    };
  }

  /** What was worked out where there is something; common practice where there is not. */
  String forOwner(Failure failure) {
    String practice =
        FailureNames.remedy(failure, wording.installation(), Harm.REACHES_A_FLOOR)
            + " (common practice).";
    return found(failure)
        .map(sentence -> mendedBySomething(failure) ? sentence : practice + " " + sentence)
        .orElse(practice);
  }

  private boolean mendedBySomething(Failure failure) {
    return question.mended().stream()
        .anyMatch(mended -> mended.failure().equals(failure) && !mended.remedies().isEmpty());
  }

  /** Changes that were found to mend a failure; nothing where none were looked for. */
  Optional<String> found(Failure failure) {
    return question.mended().stream()
        .filter(mended -> mended.failure().equals(failure))
        .map(mended -> found(mended.remedies()))
        .findFirst();
  }

  private String found(List<Remedy> remedies) {
    if (remedies.isEmpty()) {
      return "Worked out here: no single change of the drawing was found that mends it.";
    }
    RemedyWords words = new RemedyWords(wording);
    List<String> changes =
        remedies.stream().limit(TOLD).map(remedy -> change(words, remedy)).toList();
    return "Worked out here: " + String.join("; or: ", changes) + ".";
  }

  private static String change(RemedyWords words, Remedy remedy) {
    List<String> costs = words.costs(remedy);
    return Sentences.goingOn(words.change(remedy.change()))
        + (costs.isEmpty()
            ? ""
            : " (but " + String.join("; ", costs.stream().map(Sentences::goingOn).toList()) + ")");
  }

  /** How large what catches the water has to be, or up to which mark a vessel may be filled. */
  private Optional<String> size(Outcome outcome) {
    return outcome.verdict() == Verdict.WET ? toCatch(outcome) : toKeep(outcome);
  }

  private Optional<String> toCatch(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.Continues goesOn ->
          Optional.of(
              "No basin is large enough, since it goes on: it takes a drain for "
                  + wording.amounts().hourlyFlow(goesOn.rate())
                  + " or something that stops it.");
      case Ending.AtRest rest ->
          Optional.of(outcome.reachedFloors())
              .filter(wording.amounts()::isWorthTelling)
              .map(
                  volume ->
                      "To catch it all, basins and drains have to take "
                          + wording.amounts().volume(volume)
                          + " more.");
      case Ending.Repeats repeats -> Optional.empty();
      case Ending.StillMoving moving -> Optional.empty();
      case Ending.UpAndDown swinging -> Optional.empty();
    };
  }

  private Optional<String> toKeep(Outcome outcome) {
    List<String> marks =
        outcome.vessels().stream()
            .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + RISES)
            .flatMap(vessel -> highestSafe(vessel.id()).stream())
            .toList();
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of("Running, keep " + Sentences.enumerate(marks) + ".");
  }

  private Optional<String> highestSafe(String id) {
    return question.marks().stream()
        .filter(marks -> marks.vessel().equals(id) && !isBasin(id))
        .flatMap(
            marks ->
                marks.highestSafe().stream()
                    .mapToObj(
                        level ->
                            wording.names().the(id)
                                + " at or below "
                                + wording.amounts().level(level - marks.bottom())))
        .findFirst();
  }

  private boolean isBasin(String id) {
    return wording.installation().vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .anyMatch(Vessel::isBasin);
  }
}
