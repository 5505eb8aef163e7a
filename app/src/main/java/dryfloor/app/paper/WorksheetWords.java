package dryfloor.app.paper;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.worksheet.Severity;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.analysis.worksheet.Worksheet;
import dryfloor.analysis.worksheet.WorksheetLine;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.ItemFunction;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.StoryDigest;
import dryfloor.app.report.Wording;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The failure-mode worksheet in words. */
final class WorksheetWords {

  private final Wording wording;
  private final ItemFunction function;
  private final StoryDigest digest;

  private final MendWords mends;

  private WorksheetWords(Question question) {
    this.wording = question.wording();
    this.mends = new MendWords(question);
    this.function = new ItemFunction(wording);
    this.digest = new StoryDigest(wording);
  }

  static Report.Worksheet of(Question question) {
    WorksheetWords words = new WorksheetWords(question);
    return new Report.Worksheet(
        words.scale(question.scale()),
        Worksheet.of(question.sweep(), question.scale()).lines().stream().map(words::row).toList());
  }

  private List<Report.Step> scale(SeverityScale scale) {
    return Arrays.stream(Severity.values())
        .sorted(Comparator.comparingInt(Severity::step).reversed())
        .map(severity -> new Report.Step(String.valueOf(severity.step()), of(severity, scale)))
        .toList();
  }

  private String of(Severity severity, SeverityScale scale) {
    Amounts amounts = wording.amounts();
    String some = amounts.volume(scale.some());
    String much = amounts.volume(scale.much());
    return switch (severity) {
      case NO_EFFECT -> "nothing leaves its vessel";
      case CAUGHT -> "basins and drains take all that spills";
      case SOME_WATER -> "up to " + some + " reach a floor";
      case WATER -> "more than " + some + " reach a floor";
      case MUCH_WATER -> much + " or more reach a floor, or water that does not stop";
    };
  }

  private WorksheetRow row(WorksheetLine line) {
    String mode = FailureNames.name(line.result().failure(), wording.installation());
    return new WorksheetRow(
        FailureNames.id(line.result().failure()),
        line.severity().map(severity -> String.valueOf(severity.step())).orElse("no answer"),
        line.item().map(wording.names()::label).orElse("Whole installation"),
        line.item().map(function::of).orElse("holds and moves the water"),
        mode,
        FailureNames.cause(line.result().failure()),
        FindingWords.outcome(line.result())
            .map(outcome -> localEffect(line.result().failure(), outcome))
            .orElse(""),
        FindingWords.sentence(wording, line.result()),
        "",
        FailureTraits.howNoticed(line.result().failure(), wording.installation()),
        Sentences.enumerate(line.acted().stream().map(wording.names()::the).toList()),
        mends.action(line.result().failure(), FindingWords.outcome(line.result())));
  }

  /** What happens first at what fails; what happens first at all where nothing does there. */
  private String localEffect(Failure failure, Outcome outcome) {
    List<String> failed = FailureTraits.components(failure);
    List<StoryDigest.Moment> moments = digest.of(outcome.story());
    return moments.stream()
        .filter(moment -> concerns(moment.event(), failed))
        .findFirst()
        .or(() -> moments.stream().findFirst())
        .map(StoryDigest.Moment::sentence)
        .orElse("No change that matters.");
  }

  private static boolean concerns(StoryEvent event, List<String> components) {
    return components.contains(event.subject()) || components.contains(event.other());
  }
}
