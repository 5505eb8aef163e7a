package dryfloor.app.report;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Decider;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.Mend;
import dryfloor.analysis.limit.SafeRange;
import dryfloor.analysis.limit.Scale;
import java.util.ArrayList;
import java.util.List;

/** How far one thing can be changed, in sentences. */
public final class LimitWords {

  private final Wording wording;
  private final PropertyWords words;

  /** Words about this installation. */
  public LimitWords(Wording wording) {
    this.wording = wording;
    this.words = new PropertyWords(wording);
  }

  /**
   * One sentence.
   *
   * @param isDetail whether it says more about the one before it
   */
  public record Line(String text, boolean isDetail) {}

  /** What is known about a property: its ranges first, each with what decides its ends. */
  public List<Line> of(LimitAnswer answer) {
    return switch (answer) {
      case LimitAnswer.Found found -> found(found);
      case LimitAnswer.HeldByOthers held ->
          List.of(
              new Line(
                  "An edge or a pipe sets it, whatever is filled in: "
                      + words.value(held.scale(), held.settled())
                      + ".",
                  false));
      case LimitAnswer.Cancelled cancelled ->
          List.of(new Line("Not answered, as it was cancelled.", false));
    };
  }

  List<Line> found(LimitAnswer.Found found) {
    Scale scale = found.scale();
    List<Line> lines = new ArrayList<>();
    found.holds().forEach(range -> holds(found, range, lines));
    if (found.holds().isEmpty()) {
      lines.add(new Line("No value that was tried holds, today's included.", false));
    }
    found
        .mark()
        .ifPresent(
            mark ->
                lines.add(
                    new Line(
                        "Filled that high, it stands at "
                            + words.value(scale, mark)
                            + " when running: the mark \"maximum while running\".",
                        false)));
    found.mends().forEach(mend -> lines.add(mends(scale, mend)));
    return lines;
  }

  private void holds(LimitAnswer.Found found, SafeRange range, List<Line> lines) {
    Scale scale = found.scale();
    boolean here = found.today().filter(range::equals).isPresent();
    String margin = here ? margin(scale, range) : "";
    lines.add(new Line("Holds " + span(scale, range) + margin + ".", false));
    end("above", scale, range.above(), range.to() + scale.step(), lines);
    end("below", scale, range.below(), range.from() - scale.step(), lines);
  }

  private void end(String side, Scale scale, Decider decider, double beyond, List<Line> lines) {
    if (!(decider instanceof Decider.NotLookedAt)) {
      String at = "At " + words.value(scale, beyond) + ", just " + side + ": ";
      lines.add(new Line(at + words.decider(scale, decider), true));
    }
  }

  private String margin(Scale scale, SafeRange range) {
    String up =
        range.above() instanceof Decider.NotLookedAt
            ? ""
            : words.difference(scale, Math.max(range.to() - scale.today(), 0)) + " left upwards";
    String down =
        range.below() instanceof Decider.NotLookedAt
            ? ""
            : words.difference(scale, Math.max(scale.today() - range.from(), 0))
                + " left downwards";
    String both = up.isEmpty() || down.isEmpty() ? up + down : up + ", " + down;
    return both.isEmpty() ? "" : ": " + both;
  }

  /** "from 72 mm on", "up to 301 mm", "from 617 mm to 683 mm". */
  private String span(Scale scale, SafeRange range) {
    boolean openBelow = range.below() instanceof Decider.NotLookedAt;
    boolean openAbove = range.above() instanceof Decider.NotLookedAt;
    String from = words.value(scale, range.from());
    String to = words.value(scale, range.to());
    if (openBelow && openAbove) {
      return "at every value looked at, " + from + " to " + to;
    }
    return openBelow
        ? "up to " + to
        : openAbove
            ? "from " + from + " (looked at up to " + to + ")"
            : "from " + from + " to " + to;
  }

  private Line mends(Scale scale, Mend mend) {
    List<String> spans = mend.ranges().stream().map(range -> span(scale, range)).toList();
    return new Line(
        "Mends \""
            + FailureNames.name(mend.failure(), wording.installation())
            + "\", which goes wrong today: "
            + Sentences.enumerate(spans)
            + ".",
        false);
  }
}
