package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
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
