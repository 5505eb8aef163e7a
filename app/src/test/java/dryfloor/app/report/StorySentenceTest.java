package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StorySentenceTest {

  private final StorySentence sentence =
      new StorySentence(Wording.of(SampleInstallation.get(), Units.METRIC), SampleOutcome.wet());

  @ParameterizedTest
  @EnumSource
  void everyEventIsAPlainSentence(What what) {
    String subject = isAboutAFailure(what) ? "power-lost.building" : "sump";
    String full = say(what, subject, "plant-room", 0.034);
    String bare = say(what, subject, "", -1);
    assertThat(full).matches("[A-Z][^_]*[^ .,:]\\.").doesNotContain("plant-room");
    assertThat(bare).matches("[A-Z][^_]*[^ .,:]\\.").doesNotContain("  ");
    assertThat(full + bare).doesNotContain(what.name());
  }

  private static boolean isAboutAFailure(What what) {
    return what == What.FAILS || what == What.PUT_RIGHT;
  }

  @ParameterizedTest
  @EnumSource(
      names = {
        "RUN_EMPTIES",
        "SPILLS",
        "FLOODED",
        "STOPS_SPILLING",
        "LEAKS",
        "BURSTS",
        "POURED",
        "TAKEN",
        "TAKEN_IN_PART"
      })
  void waterComesWithItsLitres(What what) {
    assertThat(say(what, "sump", "plant-room", 0.034)).contains("34 L");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SPILLS | sump | plant-room | 0.034"
            + "| The sump stands at its rim and begins to spill onto the plant room floor:"
            + " 34 L in all.",
        "SPILLS | sump | tray | -1"
            + "| The sump stands at its rim and begins to spill into the sump tray.",
        "SILL_REACHED | hall | beyond | 0.5"
            + "| The water on the hall floor reaches the sill and flows over it beyond the drawing:"
            + " 500 L in all.",
        "FLOODED | sump | tray | 0.031"
            + "| The water in the sump tray reaches the rim of the sump and runs into it:"
            + " 31 L in all.",
        "RUNS_BACKWARDS | return-line | sump | -1"
            + "| Water runs backwards through the return line into the sump.",
        "SIPHON_BREAKS | return-break | return-line | -1"
            + "| The siphon break lets air in and stops the flow in the return line.",
        "SILL_REACHED | hall | plant-room | -1"
            + "| The water on the hall floor reaches the sill and flows over it onto the plant room"
            + " floor.",
        "ACTS | top-off-switch | sump | -1 | The top-off switch trips on the water in the sump.",
        "ACTS | top-off-switch | hall | -1"
            + "| The top-off switch trips on the water on the hall floor.",
        "TAKES_AIR_AT_OPENING | return-line | hall | -1"
            + "| Air gets into the return line through its open end over the hall floor.",
        "TAKES_AIR_AT_OPENING | return-line | sump | -1"
            + "| Air gets into the return line: its opening in the sump is uncovered.",
        "TAKES_AIR_AT_OPENING | return-line | return-line | -1"
            + "| Air gets into the return line.",
        "LETS_GO | top-off-switch | sump | -1"
            + "| The top-off switch resets on the water in the sump.",
        "TAKEN | sump | '' | 0.06 | Somebody takes water out of the sump by hand: 60 L.",
        "TAKEN_IN_PART | sump | '' | 0.023"
            + "| Somebody takes water out of the sump by hand, less than was meant: 23 L is all"
            + " that can be reached.",
        "STOPS | return-pump | '' | -1 | The return pump stops.",
        "STOPS | top-off-pump | top-off-switch | -1"
            + "| The top-off pump stops: the top-off switch has switched it off."
      })
  void theOwnerUnderstandsItAloud(
      What what, String subject, String other, double volume, String expected) {
    assertThat(say(what, subject, other, volume)).isEqualTo(expected);
  }

  @Test
  void namesWithCapitalsOfTheirOwnKeepThem() {
    assertThat(say(What.STOPS, "UV lamp", "", -1)).isEqualTo("The UV lamp stops.");
  }

  private String say(What what, String subject, String other, double volume) {
    return sentence.of(SampleOutcome.event(0, what, subject, other, volume));
  }
}
