package dryfloor.app.paper;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.app.report.Wording;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything that is handed over, from one analysis: the way into this package. */
public final class Papers {

  /** Name and version of what wrote them. */
  public static final String PROGRAM = "dryfloor 0.1.0";

  private Papers() {}

  /**
   * What is asked for the drawing in a file, with the fingerprint of that file.
   *
   * @param marks for the glass
   * @param mended failures for which mends were looked for
   * @throws IOException if the file can't be read any more
   */
  public static Question question(
      Path file,
      LocalDate date,
      SweepResult sweep,
      List<VesselMarks> marks,
      List<Question.Mended> mended,
      Wording wording,
      SeverityScale severity)
      throws IOException {
    return new Question(
        sweep, wording, severity, drawing(file, date, sweep, wording), marks, mended);
  }

  private static Report.Drawing drawing(
      Path file, LocalDate date, SweepResult sweep, Wording wording) throws IOException {
    return new Report.Drawing(
        sweep.installation().name(),
        String.valueOf(file.getFileName()),
        Fingerprint.of(file),
        date.toString(),
        PROGRAM,
        wording.amounts().hours(sweep.installation().conditions().away()));
  }

  /**
   * Two versions of a drawing, failure by failure, as a page and on sheets of this size.
   *
   * @param wording of the new one
   * @throws IOException if one of the files can't be read any more
   */
  public static List<PaperFile> compared(
      Version old, Version present, LocalDate date, Wording wording, PaperSize size)
      throws IOException {
    Comparison comparison =
        Comparison.of(
            Changes.between(old.sweep(), present.sweep()),
            drawing(old.file(), date, old.sweep(), wording),
            drawing(present.file(), date, present.sweep(), wording),
            wording);
    return List.of(
        PaperFile.renewed(".compared", ".html", () -> text(HtmlPages.of(comparison))),
        PaperFile.renewed(".compared", ".pdf", () -> PdfPages.of(comparison, size)));
  }

  /** A version of a drawing in its file, and its answers. */
  public record Version(Path file, SweepResult sweep) {}

  /** The files of these forms, on sheets of this size. */
  public static List<PaperFile> of(Question question, List<PaperForm> forms, PaperSize size) {
    Report report = ReportWords.of(question);
    return forms.stream().flatMap(form -> of(question, report, form, size)).toList();
  }

  private static Stream<PaperFile> of(
      Question question, Report report, PaperForm form, PaperSize size) {
    return switch (form) {
      case html ->
          Stream.of(PaperFile.renewed(".report", ".html", () -> text(HtmlPages.of(report))));
      case pdf ->
          Stream.of(
              PaperFile.renewed(".report", ".pdf", () -> PdfPages.of(report, size)),
              PaperFile.renewed(".marks", ".pdf", () -> MarkStripPages.of(question, size)));
      case csv ->
          Stream.of(
              PaperFile.renewed(".worksheet", ".csv", () -> text(WorksheetCsv.of(report))),
              PaperFile.renewed(".rehearsal", ".csv", () -> text(RehearsalCsv.of(question))));
      case xlsx ->
          Stream.of(
              PaperFile.renewed(".worksheet", ".xlsx", () -> WorksheetSpreadsheet.of(report)));
      case json ->
          Stream.of(
              PaperFile.renewed(".report", ".json", () -> text(ReportJson.of(report, question))));
    };
  }

  /**
   * What was rehearsed on a day, to be kept beside the drawing.
   *
   * @param sheet fingerprint of the drawing for which the sheet was made, where there was one
   */
  public static PaperFile record(
      Path file,
      String day,
      List<RehearsalRecord.Rehearsed> all,
      Optional<String> sheet,
      Wording wording) {
    return PaperFile.kept(
        ".rehearsal." + day,
        ".json",
        () ->
            text(
                RehearsalRecord.json(
                    all,
                    new RehearsalRecord.About(
                        VisibleText.of(String.valueOf(file.getFileName())),
                        Fingerprint.of(file),
                        sheet,
                        day,
                        PROGRAM),
                    wording)));
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
