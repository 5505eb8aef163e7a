package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.together.KeptOutcome;
import dryfloor.analysis.together.Pair;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.analysis.together.Scope;
import dryfloor.app.report.Ink;
import dryfloor.app.sample.SampleOutcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PairsCommandTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();
  private static final Failure HOLE = new Failure.SiphonBreakBlocked("return-break");
  private static final Failure WALL = new Failure.WallFails("display");
  private static final PairAnswer WET =
      new PairAnswer.Together(
          new Pair(POWER, HOLE),
          new KeptOutcome(
              Verdict.WET,
              0.034,
              List.of("plant-room"),
              OptionalDouble.of(130),
              new Ending.AtRest(240),
              new Outcome.Margin(Optional.of("sump"), -0.004, 95)));
  private static final PairAnswer DRY =
      new PairAnswer.AsOneAlone(new Pair(POWER, HOLE), Verdict.DRY);
  private static final PairAnswer OPEN =
      new PairAnswer.Unanswered(new Pair(POWER, HOLE), "it took too long");

  @TempDir private Path folder = Path.of("");

  private static Desk desk(PairAnswer... pairs) {
    return new Desk()
        .answers(
            Desk.answered(POWER, SampleOutcome.dry()), Desk.answered(HOLE, SampleOutcome.dry()))
        .pairs(pairs);
  }

  @Test
  void aPairThatWetsAFloorIsToldWithWhatItsProtectionAloneKeepsDry() throws IOException {
    Desk desk = desk(WET);

    assertThat(desk.run("pairs", drawing())).isEqualTo(1);
    assertThat(desk.out())
        .contains("1 pair wets a floor though neither failure does so alone.")
        .containsPattern(
            "Power lost in the whole building +Siphon break blocked +34 L on plant room floor +2"
                + " min 10 s")
        .containsSubsequence(
            "Nobody notices these, and they alone decide: test them",
            "Siphon break blocked: then this wets a floor and otherwise does not:",
            "- Power lost in the whole building (34 L)")
        .containsSubsequence("as a picture", "Siphon break blocked  ▲", "1  Power lost")
        .contains("Pairs: 1 simulated together.", "Take care");
  }

  @Test
  void noWetPairEndsWithZero() throws IOException {
    Desk desk = desk(DRY);

    assertThat(desk.run("pairs", drawing())).isZero();
    assertThat(desk.out())
        .contains("1 hidden failure with everything that can happen to the power: 1 pair.")
        .contains("No pair wets a floor that stays dry after each of the two alone.");
  }

  @Test
  void aFailureThatWetsAFloorAloneEndsWithOneAndIsNamedFirst() throws IOException {
    Desk desk =
        desk(new PairAnswer.WetAlone(new Pair(HOLE, WALL), false, true))
            .answers(
                Desk.answered(HOLE, SampleOutcome.dry()), Desk.answered(WALL, SampleOutcome.wet()));

    assertThat(desk.run("pairs", drawing())).isEqualTo(1);
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains("1 failure wets a floor alone")
        .contains("must be mended first; 1 pair with it tells nothing more.");
  }

  @Test
  void whereNoPairIsWithAWetFailureNoneIsCounted() throws IOException {
    Desk desk =
        desk(DRY)
            .answers(
                Desk.answered(HOLE, SampleOutcome.dry()), Desk.answered(WALL, SampleOutcome.wet()));

    desk.run("pairs", drawing());
    assertThat(desk.out().replaceAll("\\s+", " ")).contains("and must be mended first. ");
  }

  @Test
  void noAnswerIsNeverDry() throws IOException {
    Desk desk = desk(OPEN);

    assertThat(desk.run("pairs", drawing())).isEqualTo(3);
    assertThat(desk.out()).contains("No answer, which never counts as dry", "it took too long");
  }

  @Test
  void moreIsAskedWithOptions() throws IOException {
    Desk desk = desk(DRY);
    desk.run("pairs", drawing());
    assertThat(desk.scopeAsked()).isEqualTo(Scope.HIDDEN_WITH_POWER);
    desk.run("pairs", drawing(), "--visible");
    assertThat(desk.scopeAsked()).isEqualTo(Scope.HIDDEN_WITH_ANY_EVENT);
    desk.run("pairs", drawing(), "--all");
    assertThat(desk.scopeAsked()).isEqualTo(Scope.EVERY_TWO);
    assertThat(desk.run("pairs", drawing(), "--all", "--visible")).isEqualTo(2);
  }

  @Test
  void fewCharactersAreEnough() throws IOException {
    Desk desk = desk(WET).in(new Ink(false, false));
    desk.run("pairs", drawing(), "--units", "us");
    assertThat(desk.out()).contains("Siphon break blocked  !", "9.0 gal on plant room floor");
    assertThat(desk.out().chars()).allMatch(character -> character < 128);
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = desk(WET);

    assertThat(desk.run("pairs", drawing(), "--json")).isEqualTo(1);
    JsonNode root = JsonMapper.shared().readTree(desk.out());
    JsonNode drawing = root.path("drawings").path(0);
    assertThat(root.path("kind").asString()).isEqualTo("pairs");
    assertThat(drawing.path("scope").asString()).isEqualTo("HIDDEN_WITH_POWER");
    JsonNode wet = drawing.path("wetTogether").path(0);
    assertThat(wet.path("second").asString()).isEqualTo("siphon-break-blocked.return-break");
    assertThat(wet.path("reachedFloors_L").asDouble()).isEqualTo(34);
    assertThat(drawing.path("protections").path(0).path("aloneKeepsDry").path(0).asString())
        .isEqualTo("power-lost.building");
    assertThat(drawing.path("matrix").path("cells").path(0).path(0).asString())
        .isEqualTo("WET_TOGETHER");
  }

  @Test
  void aDrawingThatSpillsWhenAllIsWellIsWrong() throws IOException {
    Desk desk = desk(DRY).spillsWhenAllIsWell();
    assertThat(desk.run("pairs", drawing(), "--json")).isEqualTo(2);
    assertThat(desk.err()).contains("normal operation is not sound");
  }

  @Test
  void aPairIsToldInFull() throws IOException {
    FailureResult both = Desk.answered(HOLE, SampleOutcome.wet());
    Desk desk = new Desk().answers(both);

    assertThat(desk.run("tell", drawing(), "return-break", "--and", "power-lost.building"))
        .isEqualTo(1);
    assertThat(desk.out())
        .contains(
            "Siphon break blocked (siphon-break-blocked.return-break), and at once: Power lost in"
                + " the whole building (power-lost.building)");
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
