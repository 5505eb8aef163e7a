package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The strips are measured in the PDF itself, as with a ruler on the print. */
class MarkStripPagesTest {

  private static final double POINTS_TO_MM = 25.4 / 72;

  /** A tenth of what anybody can mark on a glass (mm). */
  private static final double EXACT = 0.1;

  private static final Question METRIC =
      withAMarkNearTheRim(
          SampleReport.question(ShippedDrawing.read("first-look/as-drawn.json"), Units.METRIC));

  /**
   * A mark 35.9 mm below the rim makes the strip of the sump begin there and run on to a second.
   */
  private static Question withAMarkNearTheRim(Question found) {
    return new Question(
        found.sweep(),
        found.wording(),
        found.scale(),
        found.drawing(),
        found.marks().stream()
            .map(
                marks ->
                    new VesselMarks(
                        marks.vessel(),
                        marks.bottom(),
                        marks.rim(),
                        marks.normal(),
                        marks.afterPowerLoss(),
                        marks.vessel().equals("sump")
                            ? OptionalDouble.of(marks.rim() - 0.0359)
                            : OptionalDouble.empty(),
                        marks.powerLoss()))
            .toList(),
        List.of());
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void aHundredMillimetresOfRulerAreAHundredMillimetresOfPaper(PaperSize size) throws IOException {
    try (PDDocument document = Loader.loadPDF(MarkStripPages.of(METRIC, size))) {
      List<Box> boxes = Boxes.on(document.getPage(pageOf(document, "Sump, sheet 1")));
      List<Box> tens = boxes.stream().filter(box -> isNear(box.width(), 9)).toList();
      double first = tens.getFirst().top();
      for (int i = 0; i < tens.size(); i++) {
        assertThat(tens.get(i).top() - first).isEqualTo(10.0 * i, within(EXACT));
      }
      assertThat(tens).hasSizeGreaterThan(15);
    }
  }

  @Test
  void theLineToCheckThePrintByIsAHundredMillimetresLong() throws IOException {
    try (PDDocument document = Loader.loadPDF(MarkStripPages.of(METRIC, PaperSize.A4))) {
      assertThat(Boxes.on(document.getPage(0))).anyMatch(box -> isNear(box.width(), 100));
    }
  }

  @Test
  void theHighestSafeLevelStandsWhereItIsBelowTheRim() throws IOException {
    double safe =
        METRIC.marks().stream()
            .filter(marks -> marks.vessel().equals("sump"))
            .mapToDouble(marks -> (marks.rim() - marks.highestSafe().orElseThrow()) * 1000)
            .findFirst()
            .orElseThrow();
    try (PDDocument document = Loader.loadPDF(MarkStripPages.of(METRIC, PaperSize.A4))) {
      List<Box> boxes = Boxes.on(document.getPage(pageOf(document, "Sump, sheet 1")));
      double rim =
          boxes.stream().filter(box -> isNear(box.width(), 9)).findFirst().orElseThrow().top();
      assertThat(boxes.stream().filter(box -> isNear(box.width(), 50)))
          .singleElement()
          .satisfies(mark -> assertThat(mark.top() - rim).isEqualTo(safe, within(EXACT)));
    }
  }

  @Test
  void inchesAreInches() throws IOException {
    Question us = SampleReport.question(METRIC.sweep().installation(), Units.US);
    try (PDDocument document = Loader.loadPDF(MarkStripPages.of(us, PaperSize.LETTER))) {
      List<Box> boxes = Boxes.on(document.getPage(pageOf(document, "Sump, sheet 1")));
      List<Box> inches = boxes.stream().filter(box -> isNear(box.width(), 9)).toList();
      assertThat(inches.get(1).top() - inches.get(0).top()).isEqualTo(25.4, within(EXACT));
    }
  }

  private static int pageOf(PDDocument document, String words) throws IOException {
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      if (stripper.getText(document).contains(words)) {
        return page - 1;
      }
    }
    throw new AssertionError("no page says '" + words + "'");
  }

  private static boolean isNear(double length, double wanted) {
    return Math.abs(length - wanted) < EXACT;
  }

  /** A filled box, in mm from the upper left corner of the sheet. */
  record Box(double left, double top, double width, double height) {

    static Box ofPoints(double left, double top, double width, double height) {
      return new Box(
          left * POINTS_TO_MM, top * POINTS_TO_MM, width * POINTS_TO_MM, height * POINTS_TO_MM);
    }
  }
}
