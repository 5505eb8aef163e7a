package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * The pictures are what they were when somebody last looked at them. To renew them after a change,
 * run the tests with {@code -Ddryfloor.renewPictures=true} and look at every one.
 */
class ElevationPictureTest {

  private static final Path FOLDER = Path.of("src/test/resources/dryfloor/app/drawing");

  /** The pictures that are kept. */
  enum Picture {
    WET,
    CAUGHT,
    DRY,
    WET_IN_FEET;

    String svg() {
      return SvgWriter.write(
          switch (this) {
            case WET -> SampleElevation.of(SampleOutcome.wet(), Units.METRIC);
            case CAUGHT -> SampleElevation.of(SampleOutcome.caught(), Units.METRIC);
            case DRY -> SampleElevation.of(SampleOutcome.dry(), Units.METRIC);
            case WET_IN_FEET -> SampleElevation.of(SampleOutcome.wet(), Units.US);
          });
    }

    Path file() {
      return FOLDER.resolve(name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg");
    }
  }

  @ParameterizedTest
  @EnumSource
  void looksAsItDidWhenSomebodyLastLooked(Picture picture) throws IOException {
    if (Boolean.getBoolean("dryfloor.renewPictures")) {
      Files.writeString(picture.file(), picture.svg());
    }
    assertThat(picture.svg()).isEqualTo(Files.readString(picture.file()));
  }

  @ParameterizedTest
  @EnumSource
  void isWellFormed(Picture picture)
      throws ParserConfigurationException, IOException, SAXException {
    Document document =
        DocumentBuilderFactory.newDefaultNSInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(picture.svg())));
    assertThat(document.getDocumentElement().getLocalName()).isEqualTo("svg");
    assertThat(document.getElementsByTagNameNS("*", "text").getLength()).isGreaterThan(20);
  }
}
