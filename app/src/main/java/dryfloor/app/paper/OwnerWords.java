package dryfloor.app.paper;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.Tally;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page for owner, insurer and building manager. */
final class OwnerWords {

  /** So many ways to make it better have room on one page. */
  private static final int ROOM = 4;

  /** Less than this (m) is no rise. */
  private static final double RISES = 1e-3;

  private final Question question;
  private final Wording wording;
  private final SweepResult sweep;
  private final Installation drawing;

  private OwnerWords(Question question) {
    this.question = question;
    this.wording = question.wording();
    this.sweep = question.sweep();
    this.drawing = wording.installation();
  }

  static Report.Owner of(Question question) {
    OwnerWords words = new OwnerWords(question);
    Optional<FailureResult> power = powerLoss(question.sweep());
    Tally tally = Tally.of(question.sweep().results());
    return new Report.Owner(
        words.installation(),
        power.map(words::power).orElseGet(words::noPower),
        power.flatMap(words::picture),
        worst(question.sweep()).map(result -> FindingWords.of(words.wording, result)),
        tally.total()
            + " single failures were worked out: "
            + tally.words()
            + "."
            + DoubtWords.sentence(question).map(doubt -> " " + doubt).orElse(""),
        words.better(),
        words.assumed(),
        words.uncovered());
  }

  static Optional<FailureResult> powerLoss(SweepResult sweep) {
    return sweep.results().stream()
        .filter(result -> result.failure() instanceof Failure.BuildingLosesPower)
        .findFirst();
  }

  /** The one with most water on floors. */
  static Optional<FailureResult.Answered> worst(SweepResult sweep) {
    return FindingWords.answered(sweep)
        .filter(answered -> Answer.of(answered) == Answer.WET)
        .max(Comparator.comparingDouble(answered -> answered.outcome().reachedFloors()));
  }

  /** The finding, with how far the water comes up where it does. */
  private Report.Finding power(FailureResult result) {
    Report.Finding finding = FindingWords.of(wording, result);
    String risen =
        FindingWords.outcome(result).stream()
            .flatMap(outcome -> outcome.vessels().stream())
            .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + RISES)
            .filter(vessel -> vessel.highestLevel() < vessel.rim())
            .map(this::risen)
            .collect(Collectors.joining());
    return new Report.Finding(
        finding.kind(),
        finding.verdict(),
        finding.failure(),
        finding.sentence() + risen,
        finding.time());
  }

  private String risen(Outcome.VesselOutcome vessel) {
    return " "
        + wording.names().theAtStart(vessel.id())
        + " rises by "
        + wording.amounts().level(vessel.highestLevel() - vessel.levelBefore())
        + " and stops "
        + wording.amounts().level(vessel.rim() - vessel.highestLevel())
        + " below its rim.";
  }

  private Report.Finding noPower() {
    return new Report.Finding(
        "dry",
        Answer.DRY.sign(true) + " " + Answer.DRY.word(),
        "Power lost",
        "Nothing in this drawing needs electricity.",
        "");
  }

  private Optional<Picture> picture(FailureResult power) {
    return switch (power) {
      case FailureResult.Answered answered ->
          Optional.of(FindingWords.picture(wording, answered, "power"));
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  private String installation() {
    double water =
        sweep.normal().vessels().stream().mapToDouble(Outcome.VesselOutcome::volumeBefore).sum();
    List<String> holders =
        drawing.vessels().stream()
            .filter(vessel -> !vessel.isBasin())
            .map(vessel -> wording.names().the(vessel.id()) + " " + volume(vessel))
            .toList();
    return "In all "
        + wording.amounts().volume(water)
        + " of water stand in "
        + holders.size()
        + (holders.size() == 1 ? " vessel on " : " vessels on ")
        + drawing.storeys().size()
        + (drawing.storeys().size() == 1 ? " storey: " : " storeys: ")
        + Sentences.enumerate(holders)
        + ". What stands in the pipes comes on top of that.";
  }

  private String volume(Vessel vessel) {
    return sweep.normal().vessels().stream()
        .filter(outcome -> outcome.id().equals(vessel.id()))
        .map(outcome -> "(" + wording.amounts().volume(outcome.volumeBefore()) + ")")
        .findFirst()
        .orElse("");
  }

  /**
   * What helps against those failures that bring most water, each remedy once: what was worked out
   * for this installation where it was, otherwise common practice.
   */
  private List<String> better() {
    MendWords mends = new MendWords(question);
    Map<String, String> remedies = new LinkedHashMap<>();
    wetPowerLossFirst()
        .forEach(
            answered ->
                remedies.putIfAbsent(
                    mends.forOwner(answered.failure()),
                    FailureNames.name(answered.failure(), drawing)));
    List<String> better = new ArrayList<>();
    remedies.entrySet().stream()
        .limit(ROOM)
        .forEach(
            remedy ->
                better.add("Against \u201c" + remedy.getValue() + "\u201d: " + remedy.getKey()));
    if (better.isEmpty()) {
      better.add("No single failure that was worked out wets a floor.");
    }
    long hidden =
        sweep.results().stream()
            .filter(result -> FailureTraits.isHidden(result.failure(), drawing))
            .count();
    if (hidden > 0) {
      better.add(
          hidden
              + (hidden == 1 ? " of the failures shows" : " of the failures show")
              + " nothing until something else fails. Have those parts tested on a schedule; the"
              + " worksheet names them.");
    }
    return better;
  }

  /** What wets a floor; the loss of power, which the page asks about first, before all others. */
  private Stream<FailureResult.Answered> wetPowerLossFirst() {
    return FindingWords.answered(sweep)
        .filter(answered -> Answer.of(answered) == Answer.WET)
        .sorted(
            Comparator.comparing(
                answered -> !(answered.failure() instanceof Failure.BuildingLosesPower)));
  }

  private List<String> assumed() {
    return List.of(
        "One thing fails at a time while all else works as drawn, and nobody comes for "
            + wording.amounts().hours(drawing.conditions().away())
            + ".",
        "The building is as drawn, and the levels begin where they settle in normal operation."
            + asMeasured(),
        "Sizes of leaks and of burst pipes are common practice, and where water lands is what the"
            + " drawing says.",
        "How likely a failure is was not looked at; no failure is left out for being rare.");
  }

  /**
   * The paper is for the drawing as it stands, also where the drawing says how far it may be off.
   */
  private String asMeasured() {
    return drawing.tolerances().isEmpty()
        ? ""
        : " The drawing says of some measures how far they may be off; the answers are for what is"
            + " drawn"
            + (question.banded().isPresent()
                ? ", and a page tells how bad and how good each can be."
                : ".");
  }

  private List<String> uncovered() {
    List<String> uncovered = new ArrayList<>();
    uncovered.add(
        "Two failures at once, water hammer, splashing and waves, evaporation, earthquakes, and"
            + " pipes that burst elsewhere than at a joint or at their lowest point.");
    uncovered.add("Damage to things: only water is counted, not what it does.");
    sweep.results().stream()
        .filter(FailureResult.Skipped.class::isInstance)
        .map(FailureResult.Skipped.class::cast)
        .forEach(
            skipped ->
                uncovered.add(
                    FailureNames.name(skipped.failure(), drawing)
                        + ": switched off in the drawing. Reason given there: "
                        + skipped.reason()));
    sweep.results().stream()
        .filter(FailureResult.Unanswered.class::isInstance)
        .forEach(
            result ->
                uncovered.add(
                    FailureNames.name(result.failure(), drawing)
                        + ": no answer was found; count it as wet."));
    FailureCatalogue.unknownSkips(drawing)
        .forEach(
            skip ->
                uncovered.add(
                    skip.failure()
                        + ": switched off in the drawing, which has no such failure ("
                        + skip.reason()
                        + ")"));
    return uncovered;
  }
}
