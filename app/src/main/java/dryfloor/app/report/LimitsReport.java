package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Decider;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Mend;
import dryfloor.analysis.limit.SafeRange;
import dryfloor.analysis.limit.Scale;
import dryfloor.analysis.limit.SingleChange;
import java.util.List;

/** How far each thing can be changed before a further failure wets a floor. */
public final class LimitsReport {

  /** So many changes are told for each failure that they mend. */
  private static final int MENDS = 4;

  private final Wording wording;
  private final PropertyWords words;
  private final LimitResult result;
  private final Lines lines;

  private LimitsReport(Wording wording, LimitResult result, Ink ink) {
    this.wording = wording;
    this.words = new PropertyWords(wording);
    this.result = result;
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(LimitResult result, Wording wording, Ink ink) {
    LimitsReport report = new LimitsReport(wording, result, ink);
    report.head();
    report.smallestMends();
    report.limited();
    report.unlimited();
    report.held();
    report.cancelled();
    report.meaning();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    Tally tally = Tally.of(result.today().results());
    lines.paragraph(
        "",
        "As drawn: "
            + tally.total()
            + " failures, "
            + tally.words()
            + ". A range holds while every failure that is dry or caught today stays so.");
  }

  /** For each failure that wets a floor today the smallest changes of one thing that mend it. */
  private void smallestMends() {
    List<Failure> mendable =
        result.wrongToday().stream().filter(f -> !result.mends(f).isEmpty()).toList();
    if (mendable.isEmpty()) {
      return;
    }
    lines.heading("What one change mends, smallest first; every other failure was run again");
    for (Failure failure : mendable) {
      lines.paragraph("  ", "    ", FailureNames.name(failure, wording.installation()));
      result.mends(failure).stream().limit(MENDS).forEach(this::mend);
    }
  }

  private void mend(SingleChange change) {
    Scale scale = change.scale();
    lines.paragraph(
        "    - ",
        "      ",
        words.name(change.property())
            + ": "
            + words.value(scale, change.value())
            + " in place of "
            + words.value(scale, scale.today()));
  }

  private void limited() {
    for (LimitAnswer.Found found : of(LimitAnswer.Found.class)) {
      if (!found.isUnlimited() || !found.mends().isEmpty()) {
        property(found);
      }
    }
  }

  private void property(LimitAnswer.Found found) {
    Scale scale = found.scale();
    lines.heading(
        words.name(found.property())
            + ", today "
            + words.value(scale, scale.today())
            + "  ("
            + PropertyWords.id(found.property())
            + ")");
    found.holds().forEach(range -> holds(found, range));
    if (found.holds().isEmpty()) {
      lines.paragraph("  ", "    ", "No value that was tried holds, today's included.");
    }
    found
        .mark()
        .ifPresent(
            mark ->
                lines.paragraph(
                    "  ",
                    "    ",
                    "Filled that high, it stands at "
                        + words.value(scale, mark)
                        + " when running: the mark \"maximum while running\"."));
    found.mends().forEach(mend -> mends(scale, mend));
  }

  private void holds(LimitAnswer.Found found, SafeRange range) {
    Scale scale = found.scale();
    boolean here = found.today().filter(range::equals).isPresent();
    String margin = here ? margin(scale, range) : "";
    lines.paragraph("  ", "    ", "Holds " + span(scale, range) + margin + ".");
    end("above", scale, range.above(), range.to() + scale.step());
    end("below", scale, range.below(), range.from() - scale.step());
  }

  private void end(String side, Scale scale, Decider decider, double beyond) {
    if (!(decider instanceof Decider.NotLookedAt)) {
      lines.paragraph(
          "    ",
          "      ",
          "At "
              + words.value(scale, beyond)
              + ", just "
              + side
              + ": "
              + words.decider(scale, decider));
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

  private void mends(Scale scale, Mend mend) {
    List<String> spans = mend.ranges().stream().map(range -> span(scale, range)).toList();
    lines.paragraph(
        "  ",
        "    ",
        "Mends \""
            + FailureNames.name(mend.failure(), wording.installation())
            + "\", which wets a floor today: "
            + Sentences.enumerate(spans)
            + ".");
  }

  private void unlimited() {
    List<String> names =
        of(LimitAnswer.Found.class).stream()
            .filter(found -> found.isUnlimited() && found.mends().isEmpty())
            .map(
                found ->
                    words.name(found.property())
                        + " ("
                        + words.value(found.scale(), found.scale().value(found.scale().least()))
                        + " to "
                        + words.value(found.scale(), found.scale().value(found.scale().most()))
                        + ")")
            .toList();
    if (!names.isEmpty()) {
      lines.heading("No limit within what was looked at");
      names.forEach(name -> lines.paragraph("  ", "    ", name));
    }
  }

  private void held() {
    List<LimitAnswer.HeldByOthers> held = of(LimitAnswer.HeldByOthers.class);
    if (!held.isEmpty()) {
      lines.heading("Levels that an edge or a pipe sets, whatever is filled in");
      held.forEach(
          answer ->
              lines.paragraph(
                  "  ",
                  "    ",
                  words.name(answer.property())
                      + ": "
                      + words.value(answer.scale(), answer.settled())));
    }
  }

  private void cancelled() {
    List<LimitAnswer.Cancelled> cancelled = of(LimitAnswer.Cancelled.class);
    if (!cancelled.isEmpty()) {
      lines.heading("Not answered, as it was cancelled");
      cancelled.forEach(answer -> lines.add("  " + words.name(answer.property())));
    }
  }

  private void meaning() {
    lines.blank();
    lines.paragraph(
        "",
        "Heights are above the inside bottom of the vessel. One thing is changed at a time, all else"
            + " stays as drawn. Every end was tried with every failure, as was its neighbour beyond;"
            + " between the values tried first, a sixteenth of the scale apart, a narrower gap would"
            + " not be seen.");
  }

  private <A extends LimitAnswer> List<A> of(Class<A> kind) {
    return result.answers().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
