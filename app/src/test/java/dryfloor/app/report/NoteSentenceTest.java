package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Note;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class NoteSentenceTest {

  static Stream<Arguments> notes() {
    return Stream.of(
        Arguments.of(new Note.SiphonBreakInDoubt("return-break", true), "in which it does."),
        Arguments.of(new Note.PrimingInDoubt("return", true), "in which it fills early."),
        Arguments.of(
            new Note.PrimingInDoubt("return", false), "in which it fills late or not at all."),
        Arguments.of(new Note.SiphonBreakInDoubt("return-break", false), "in which it does not."),
        Arguments.of(new Note.DripInDoubt("main-drain", true), "the worse one, in which it drips."),
        Arguments.of(new Note.SiphonBreakTooSmall("return-break"), "taken as closed."),
        Arguments.of(
            new Note.AtVapourPressure("return-line", 40, 60.4),
            "the water boils there, 40.00 m along it at +60.40 m"),
        Arguments.of(
            new Note.RunPartlyFull(List.of("main-drain"), "sump", 0.031, 0.062, 0.131),
            "about 31 L more are on their way there when the feed stops"),
        Arguments.of(
            new Note.NeverRan("top-off-line", "plant-room"),
            "Once it runs, its water goes onto the plant room floor."),
        Arguments.of(
            new Note.EmergencyDrainRuns("main-drain", 0.2e-3),
            "an emergency drain, carries 12 L/min already."),
        Arguments.of(
            new Note.DripsWhilePartlyFull("main-drain"), "so five times as much may drip."),
        Arguments.of(new Note.MayFloat("sump"), "The sump could float up"),
        Arguments.of(
            new Note.SettlesElsewhere("sump", -2.42, -2.407),
            "The drawing shows the sump at 260 mm; running, it settles at 273 mm."));
  }

  @ParameterizedTest
  @MethodSource("notes")
  void doubtsAreToldInPlainWords(Note note, String words) {
    String sentence = new NoteSentence(Wording.of(SampleInstallation.get(), Units.METRIC)).of(note);
    assertThat(sentence).contains(words).endsWith(".").doesNotContain("return-");
  }
}
