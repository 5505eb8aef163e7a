package dryfloor.app.command;

import static dryfloor.app.command.Desk.answered;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.sample.SampleOutcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TellAndDrawCommandTest {

  private static final FailureResult WET =
      answered(new Failure.SiphonBreakBlocked("return-break"), SampleOutcome.wet());

  @TempDir private Path folder = Path.of("");

  @Test
  void oneFailureIsToldInFull() throws IOException {
    Desk desk = new Desk().answers(WET);
    assertThat(desk.run("tell", drawing(), "siphon-break-blocked.return-break")).isEqualTo(1);
    assertThat(desk.out())
        .containsSubsequence(
            "▲ WET",
            "34 L reach the plant room floor (3 mm deep), the first after 2 min 10 s.",
            "What happens",
            "1 min 35 s",
            "The sump stands at its rim",
            "Levels",
            "Display",
            "651 mm",
            "460 mm",
            "−191 mm",
            "240 mm",
            "−260 L",
            "35.0 g/kg",
            "Floors",
            "34 L",
            "Drains took",
            "12 L",
            "Times",
            "levels within 1 mm of their end after 4 min",
            "Where the water went",
            "through the return line",
            "245 L",
            "Doubts and limits",
            "In doubt",
            "Take care",
            "Electricity",
            "engineering estimate");
  }

  @Test
  void theBeginningOfAnIdIsEnough() throws IOException {
    assertThat(new Desk().run("tell", drawing(), "power-lost")).isZero();
  }

  @Test
  void aNameInFullIsMeantEvenWhereLongerOnesBeginWithIt() throws IOException {
    assertThat(new Desk().run("tell", drawing(), "Overflow teeth clogged")).isZero();
  }

  @Test
  void anIdIsFoundInAnyCaseEvenWhereTheDrawingHasCapitals() throws IOException {
    String file = Files.readString(Path.of(drawing())).replace("\"return-pump\"", "\"PumpB\"");
    Path capitals = Files.writeString(folder.resolve("capitals.json"), file);
    for (String id : new String[] {"pump-stops.PumpB", "pump-stops.pumpb"}) {
      assertThat(new Desk().run("tell", capitals.toString(), id)).isZero();
    }
  }

  @Test
  void aFailureTwiceOrTogetherWithNormalIsRefused() throws IOException {
    Desk twice = new Desk();
    assertThat(twice.run("tell", drawing(), "power-lost", "--and", "power-lost.building"))
        .isEqualTo(2);
    assertThat(twice.err()).contains("is asked for twice");

    Desk normal = new Desk();
    assertThat(normal.run("tell", drawing(), "normal", "--and", "power-lost")).isEqualTo(2);
    assertThat(normal.err()).contains("'normal' is asked for together with a failure");
  }

  @Test
  void severalMeaningsAreListed() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("tell", drawing(), "power")).isEqualTo(2);
    assertThat(desk.err()).contains("'power' can mean any of", "power-lost.building");
  }

  @Test
  void anUnknownFailureBringsNearOnes() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("tell", drawing(), "siphon-brake")).isEqualTo(2);
    assertThat(desk.err())
        .contains("no failure is called 'siphon-brake'", "siphon-break-blocked.return-break");
  }

  @Test
  void normalOperationIsToldToo() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("tell", drawing(), "normal")).isZero();
    assertThat(desk.out()).contains("Normal operation", "● DRY", "Nothing leaves its vessel");
  }

  @Test
  void failuresAreListedWithTheirIds() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("list", drawing())).isZero();
    assertThat(desk.out())
        .contains("power-lost.building", "Power lost in the whole building")
        .containsSubsequence("siphon-break-blocked.return-break", "Siphon break blocked");
  }

  @Test
  void aMissingAnswerSaysWhy() throws IOException {
    Desk desk =
        new Desk()
            .answers(
                new FailureResult.Unanswered(
                    new Failure.NobodyComesBack(),
                    "it went on without settling; at 7265.250 s, with most going on in 'sump'"));
    assertThat(desk.run("tell", drawing(), "power-lost")).isEqualTo(3);
    assertThat(desk.out())
        .contains("? NO ANSWER", "it went on without settling; after 2 h 1 min", "the sump.")
        .containsSubsequence("What you can do", "Treat this failure as wet", "--away 108min");
  }

  @Test
  void tellSpeaksJson() throws IOException {
    Desk desk = new Desk().answers(WET);
    assertThat(desk.run("tell", drawing(), "power-lost", "--json")).isEqualTo(1);
    assertThat(desk.out()).startsWith("{").contains("\"kind\" : \"tell\"", "SPILLS");
  }

  @Test
  void aPictureIsWritten() throws IOException {
    Desk desk = new Desk().answers(WET);
    Path picture = folder.resolve("picture.svg");
    assertThat(desk.run("draw", drawing(), "power-lost", "-o", picture.toString())).isEqualTo(1);
    assertThat(Files.readString(picture)).startsWith("<?xml").contains("Plant room floor: 34 L");
  }

  @Test
  void aPictureGoesToTheStandardOutput() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("draw", drawing(), "-o", "-")).isZero();
    assertThat(desk.out()).startsWith("<?xml").endsWith("</svg>\n");
  }

  @Test
  void aPictureNeverReplacesTheDrawing() throws IOException {
    Desk desk = new Desk();
    String drawing = drawing();
    assertThat(desk.run("draw", drawing, "-o", drawing)).isEqualTo(2);
    assertThat(Files.readString(Path.of(drawing))).startsWith("{");
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
