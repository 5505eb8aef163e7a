package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.drawing.Elevation;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Pictures are as large on paper as their place allows, and keep their shape. */
class PicturesOnPaperTest {

  @Test
  void aWideBuildingFillsTheWidthOfTheSheet() throws Exception {
    // A4 less 14 mm on either side.
    assertThat(style("p-picture", 1000, 300)).isEqualTo("width: 182.0mm; height: 54.6mm");
  }

  @Test
  void aTallBuildingTakesItsShareOfTheHeight() throws Exception {
    // 36 % of 297 mm.
    assertThat(style("p-picture", 500, 1000)).isEqualTo("width: 53.5mm; height: 106.9mm");
  }

  @ParameterizedTest
  @EnumSource
  void aPictureDrawnForItsShareOfASheetFillsTheWidth(PaperSize size) {
    SheetFit fit = new SheetFit(0.3, 9);
    double height = fit.pictureHeight(size) / Elevation.ON_A_PAGE * (size.width() - 28);
    assertThat(height).isCloseTo(0.3 * size.height(), within(1e-9));
  }

  @Test
  void threePlotsHaveRoomBesideEachOther() throws Exception {
    assertThat(style("p-plot", 320, 180)).isEqualTo("width: 57.0mm; height: 32.1mm");
    assertThat(style("p-plot p-ways", 420, 180)).isEqualTo("width: 110.0mm; height: 47.1mm");
  }

  private static String style(String place, int width, int height) throws Exception {
    String page =
        "<div class='%s'><svg width='%d' height='%d'><title>x</title></svg></div>"
            .formatted(place, width, height);
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(page)));
    new PicturesOnPaper(PaperSize.A4, 0.36).mutateDocument(document);
    return document.getElementsByTagName("svg").item(0) instanceof Element picture
        ? picture.getAttribute("style")
        : "";
  }
}
