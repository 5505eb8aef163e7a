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
import dryfloor.model.element.Weir;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The failure-mode worksheet in words. */
final class WorksheetWords {

  /** Air that comes and goes inside a pipe, and the water it lets down. */
  private static final Set<StoryEvent.What> WITHIN_A_PIPE =
      EnumSet.of(
          StoryEvent.What.TAKES_AIR_AT_OPENING,
          StoryEvent.What.COLUMN_PARTS,
          StoryEvent.What.RUN_EMPTIES,
          StoryEvent.What.RUN_PRIMES);

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
        FindingWords.seen(wording, line.result()),
        Sentences.enumerate(line.acted().stream().map(wording.names()::the).toList()),
        mends.action(line.result().failure(), FindingWords.outcome(line.result())));
  }

  /**
   * What happens first at what fails, and above its edge where that is a weir; what happens first
   * at all where nothing does there. Air that gets into a pipe is told only where nothing else is.
   */
  private String localEffect(Failure failure, Outcome outcome) {
    List<String> failed = withWhatStandsBehind(FailureTraits.components(failure));
    List<StoryDigest.Moment> moments = digest.of(outcome);
    List<StoryDigest.Moment> there =
        moments.stream().filter(moment -> concerns(moment.event(), failed)).toList();
    return there.stream()
        .filter(moment -> !WITHIN_A_PIPE.contains(moment.event().what()))
        .findFirst()
        .or(() -> there.stream().findFirst())
        .or(() -> moments.stream().findFirst())
        .map(StoryDigest.Moment::sentence)
        .orElse("No change that matters.");
  }

  private List<String> withWhatStandsBehind(List<String> failed) {
    return Stream.concat(
            failed.stream(),
            wording.installation().weirs().stream()
                .filter(weir -> failed.contains(weir.id()))
                .map(Weir::from))
        .toList();
  }

  private static boolean concerns(StoryEvent event, List<String> components) {
    return components.contains(event.subject()) || components.contains(event.other());
  }
}
