package dryfloor.app.report;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Sampled;
import dryfloor.analysis.band.Weight;
import dryfloor.app.report.TextTable.Column;
import dryfloor.model.file.UncertainValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How bad and how good every failure can be where not everything is known exactly. */
public final class BandsReport {

  /** Names are broken at these widths, so that figures keep their columns. */
  private static final int FAILURE = 30;

  private static final int VALUE = 22;

  private final BandResult bands;
  private final Wording wording;
  private final UncertainWords words;
  private final BandWords found;
  private final Lines lines;

  private BandsReport(BandResult bands, List<UncertainValue> values, Wording wording, Ink ink) {
    this.bands = bands;
    this.wording = wording;
    this.words = new UncertainWords(values, wording);
    this.found = new BandWords(values, wording);
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(BandResult bands, List<UncertainValue> values, Wording wording, Ink ink) {
    BandsReport report = new BandsReport(bands, values, wording, ink);
    report.head();
    report.values();
    report.table();
    report.open();
    report.samples();
    report.unsound();
    report.search();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    lines.paragraph("", BandWords.summary(bands));
  }

  private void values() {
    lines.heading("What is not known exactly, what matters most first");
    TextTable table =
        new TextTable(
            Column.broken("value", VALUE),
            Column.right("from"),
            Column.right("as drawn"),
            Column.right("to"),
            Column.right("verdicts"),
            Column.right("on floors"),
            Column.right("margin"));
    for (Weight weight : bands.weights()) {
      int value = weight.value();
      table.row(
          words.name(value),
          words.text(value, -1),
          words.text(value, 0),
          words.text(value, 1),
          weight.verdicts() == 0 ? "none" : Integer.toString(weight.verdicts()),
          wording.amounts().tabled(weight.onFloors()),
          wording.amounts().level(weight.margin()));
    }
    lines.table(table);
    lines.paragraph(
        "  ",
        "What each does if it alone goes from end to end: how many verdicts change, by how much the"
            + " water on floors changes in all, and by how much the margin at most.");
  }

  private void table() {
    lines.heading("How bad and how good each failure can be, worst first");
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.left("at worst"),
                Column.left("at best"),
                Column.broken("failure", FAILURE),
                Column.broken("on floors", 12),
                Column.broken("margin", 14)));
    bands.sampled().ifPresent(some -> columns.add(Column.right("dry of " + asked(some))));
    columns.add(Column.broken("matters most", VALUE));
    TextTable table = new TextTable(columns.toArray(Column[]::new));
    bands.bands().forEach(band -> table.row(row(band).toArray(String[]::new)));
    lines.table(table);
  }

  private static int asked(Sampled sampled) {
    return sampled.sampling().samples();
  }

  private List<String> row(Band band) {
    List<String> row = new ArrayList<>();
    row.add(lines.ink().answer(BandWords.answer(band.worst().figures())));
    row.add(lines.ink().answer(BandWords.answer(band.best().figures())));
    row.add(found.failure(band));
    row.add(found.onFloors(band));
    row.add(found.margin(band));
    bands.sampled().ifPresent(some -> row.add(Integer.toString(some.dryAfter(band.failure()))));
    row.add(found.mattersMost(band).orElse("none"));
    return row;
  }

  private void open() {
    Map<String, List<String>> same = new LinkedHashMap<>();
    bands.bands().stream()
        .filter(Band::isOpen)
        .forEach(
            band ->
                same.computeIfAbsent(found.hangsOn(band), first -> new ArrayList<>())
                    .add(found.failure(band)));
    if (!same.isEmpty()) {
      lines.heading("Where the floor hangs on what is not known");
      same.forEach(
          (where, names) -> lines.paragraph("  ", "    ", String.join("; ", names) + ": " + where));
    }
    doubts();
  }

  private void doubts() {
    List<Band> doubtful = bands.bands().stream().filter(band -> !band.inDoubt().isEmpty()).toList();
    if (!doubtful.isEmpty()) {
      List<String> holes =
          doubtful.stream().flatMap(band -> band.inDoubt().stream()).distinct().toList();
      lines.heading("Whether it works is in doubt as well");
      lines.paragraph(
          "  ",
          "No published rule says whether "
              + Sentences.enumerate(holes.stream().map(wording.names()::the).toList())
              + " lets in enough air to stop the siphon. Wherever that mattered both courses were"
              + " run and the worse one counts, so that what is told as best after "
              + BandWords.count(doubtful.size(), "failure")
              + " is the best of the worse courses.");
    }
  }

  private void samples() {
    bands
        .sampled()
        .ifPresent(
            some -> {
              lines.heading("Samples");
              lines.paragraph(
                  "  ",
                  "At "
                      + some.dry()
                      + " of "
                      + BandWords.count(asked(some), "sample")
                      + " (seed "
                      + some.sampling().seed()
                      + ") every floor stays dry whatever single thing fails: "
                      + percent(some)
                      + " %. Each value lay anywhere between its ends, every place being as likely as"
                      + " any other; nobody knows whether it is, so this is a share of samples, not a"
                      + " probability.");
            });
  }

  /** Never rounded up to all of them. */
  private static long percent(Sampled some) {
    return 100L * some.dry() / asked(some);
  }

  private void unsound() {
    if (!bands.unsound().isEmpty()) {
      lines.heading("No failure could be judged here, which never counts as dry");
      NoAnswerWords reasons = new NoAnswerWords(wording);
      for (BandResult.Unsound unsound : bands.unsound()) {
        lines.paragraph(
            "  ",
            "    ",
            "Where "
                + words.where(unsound.point())
                + ": "
                + (unsound.drawable() ? "" : "it can't be built so: ")
                + reasons.reason(unsound.reason()));
      }
    }
  }

  private void search() {
    lines.heading("How far this goes");
    lines.paragraph(
        "  ",
        BandWords.reach(bands)
            + (bands.sampled().isPresent()
                ? " Between the ends only the samples were run."
                : " Between the ends nothing was run; --samples N runs points there.")
            + " A band spans all that was run.");
  }
}
