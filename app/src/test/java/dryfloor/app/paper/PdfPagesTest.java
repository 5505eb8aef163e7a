package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets of the right size, tagged, with their typefaces in them. */
class PdfPagesTest {

  private static final Report REPORT =
      SampleReport.of(ShippedDrawing.read("first-look/corrected.json"), Units.METRIC);
  private static final String FINGERPRINT = "ab12";
  private static final byte[] A4 = pdf(PaperSize.A4);
  private static final byte[] LETTER = pdf(PaperSize.LETTER);

  private static byte[] pdf(PaperSize size) {
    try {
      return PdfPages.of(REPORT, size);
    } catch (IOException unwritten) {
      throw new UncheckedIOException(unwritten);
    }
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void everySheetHasTheSizeThatWasAskedFor(PaperSize size) throws IOException {
    PDRectangle wanted =
        switch (size) {
          case A4 -> PDRectangle.A4;
          case LETTER -> PDRectangle.LETTER;
        };
    try (PDDocument document = Loader.loadPDF(size == PaperSize.A4 ? A4 : LETTER)) {
      assertThat(document.getPages())
          .allSatisfy(
              page -> {
                assertThat(shorter(page)).isEqualTo(wanted.getWidth(), within(0.5f));
                assertThat(longer(page)).isEqualTo(wanted.getHeight(), within(0.5f));
              });
      assertThat(document.getPages())
          .anyMatch(page -> page.getMediaBox().getHeight() == shorter(page));
    }
  }

  @Test
  void itIsTaggedAndNamesItsLanguage() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(document.getDocumentInformation().getTitle()).contains("where the water goes");
    }
  }

  @Test
  void everyTypefaceIsInTheFile() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      assertThat(fonts(document)).isNotEmpty().allMatch(PDFont::isEmbedded);
    }
  }

  @Test
  void theOwnersPageIsOnePage() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      assertThat(text(document, 1))
          .contains("What if the power goes out?", "What is not covered", "fingerprint");
      assertThat(text(document, 2)).contains("Emergency card");
    }
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void ownersPageAndEmergencyCardAreOneSheetEach(PaperSize size) throws IOException {
    for (String scenario :
        List.of("restaurant-seafood/as-drawn.json", "coral-nursery/corrected.json")) {
      Report report =
          ReportWords.of(SampleReport.withoutMarks(ShippedDrawing.read(scenario), Units.US));
      try (PDDocument document = Loader.loadPDF(PdfPages.of(report, size))) {
        assertThat(text(document, 1)).contains("What if the power goes out?", "SHA-256");
        assertThat(text(document, 2)).contains("Emergency card", "SHA-256");
        assertThat(text(document, 3)).contains("Marks for the glass");
        nothingIsTornOff(document, report);
      }
    }
  }

  @Test
  void noHeadingStandsAtTheFootOfASheet() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      nothingIsTornOff(document, REPORT);
    }
  }

  private static void nothingIsTornOff(PDDocument document, Report report) throws IOException {
    Set<String> headings =
        Stream.concat(
                Stream.of("What happens", "Levels", "Where the water went", "Doubts and limits"),
                report.courses().stream().map(course -> course.finding().failure()))
            .collect(Collectors.toSet());
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      List<String> lines =
          text(document, page)
              .lines()
              .map(String::strip)
              .filter(line -> !line.isEmpty() && !line.contains(" / "))
              .filter(line -> !line.contains(", drawing " + FINGERPRINT))
              .toList();
      // A sheet of plots has no letters but at its foot: those of pictures are drawn.
      if (!lines.isEmpty()) {
        assertThat(headings).as("page " + page).doesNotContain(lines.getLast());
        assertThat(lines.getLast()).as("page " + page).doesNotStartWith("Vessel Before After");
      }
    }
  }

  @Test
  void everySheetSaysForWhichDrawingItWasMade() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page)).contains("2026-11-26, drawing " + FINGERPRINT);
      }
    }
  }

  @Test
  void namesFromTheRightAreWrittenFromTheRight() throws IOException {
    String hebrew = "\u05DE\u05D9\u05DB\u05DC";
    Report report = SampleReport.of(SampleReport.named(hebrew), Units.METRIC);
    try (PDDocument document = Loader.loadPDF(PdfPages.of(report, PaperSize.A4))) {
      assertThat(text(document, 1)).contains(hebrew);
    }
  }

  @Test
  void picturesAreSpokenInTheTags() throws IOException {
    try (PDDocument document = Loader.loadPDF(A4)) {
      assertThat(spoken(document.getDocumentCatalog().getStructureTreeRoot()))
          .contains("Level over time: Sump")
          .anyMatch(words -> words.contains("nothing leaves its vessel"));
    }
  }

  private static List<String> spoken(PDStructureNode node) {
    List<String> words = new ArrayList<>();
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getAlternateDescription() != null) {
          words.add(element.getAlternateDescription());
        }
        words.addAll(spoken(element));
      }
    }
    return words;
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  private static List<PDFont> fonts(PDDocument document) throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }
    }
    return fonts;
  }

  private static float shorter(PDPage page) {
    return Math.min(page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
  }

  private static float longer(PDPage page) {
    return Math.max(page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
  }
}
