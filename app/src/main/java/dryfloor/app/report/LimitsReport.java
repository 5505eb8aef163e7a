package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.Scale;
import java.util.List;
import java.util.Optional;

/** How far each thing can be changed before a further failure wets a floor. */
public final class LimitsReport {

  private final Wording wording;
  private final PropertyWords words;
  private final LimitResult result;
  private final Optional<Failure> toMend;
  private final Lines lines;

  private LimitsReport(Wording wording, LimitResult result, Optional<Failure> toMend, Ink ink) {
    this.wording = wording;
    this.words = new PropertyWords(wording);
    this.result = result;
    this.toMend = toMend;
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(LimitResult result, Wording wording, Ink ink) {
    return new LimitsReport(wording, result, Optional.empty(), ink).text();
  }

  /** The same where nothing was asked but what mends one failure. */
  public static String ofMends(LimitResult result, Failure toMend, Wording wording, Ink ink) {
    return new LimitsReport(wording, result, Optional.of(toMend), ink).text();
  }

  private String text() {
    head();
    smallestMends();
    limited();
    unlimited();
    held();
    cancelled();
    meaning();
    return lines.text();
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
            + (toMend.isPresent()
                ? "."
                : ". A range holds while every failure that is dry or caught today stays so."));
    BoundsText.sentences(result.bounds(), wording)
        .forEach(sentence -> lines.paragraph("", sentence));
  }

  /** For each failure that does today what none may what mends it, the least first. */
  private void smallestMends() {
    List<Failure> mendable =
        result.wrongToday().stream().filter(f -> !result.remedies(f).isEmpty()).toList();
    if (mendable.isEmpty()) {
      return;
    }
    lines.heading("What one change mends, the least first; every failure was run again");
    for (Failure failure : mendable) {
      lines.paragraph("  ", "    ", FailureNames.name(failure, wording.installation()));
      result.remedies(failure).forEach(this::mend);
    }
  }

  private void mend(Remedy remedy) {
    RemedyWords mends = new RemedyWords(wording);
    lines.paragraph("    - ", "      ", mends.change(remedy.change()));
    mends.costs(remedy).forEach(cost -> lines.paragraph("        ", "        ", cost));
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
    LimitWords limits = new LimitWords(wording);
    for (LimitWords.Line line : limits.found(found)) {
      String indent = line.isDetail() ? "    " : "  ";
      lines.paragraph(indent, indent + "  ", line.text());
    }
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
      int wrong = result.wrongToday().size();
      if (wrong > 0) {
        lines.paragraph(
            "  ",
            "But none of these values mends "
                + (wrong == 1 ? "the one failure that goes" : "one of the " + wrong + " that go")
                + " wrong today, which no value is held against.");
      }
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
    if (toMend.isPresent()) {
      lines.paragraph(
          "",
          result.remedies().isEmpty()
              ? withoutMend(toMend.get())
              : "Heights are above the inside bottom of the vessel. A change with which a pump"
                  + " moves no water any more is no mend. Have what is added sized and fitted by"
                  + " somebody of the trade, and try it with water.");
      return;
    }
    lines.paragraph(
        "",
        "Heights are above the inside bottom of the vessel. One thing is changed at a time, all"
            + " else stays as drawn. Every end was tried with every failure that can have to do"
            + " with it, as was its neighbour beyond; between the values tried first, a sixteenth"
            + " of the scale apart, a narrower gap would not be seen.");
  }

  private String withoutMend(Failure failure) {
    return result.wrongToday().contains(failure)
        ? "No single change that was tried mends it without wetting a floor after another failure."
        : FailureNames.name(failure, wording.installation())
            + ": this does nothing as drawn that it may not, so there is nothing to mend.";
  }

  private <A extends LimitAnswer> List<A> of(Class<A> kind) {
    return result.answers().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
