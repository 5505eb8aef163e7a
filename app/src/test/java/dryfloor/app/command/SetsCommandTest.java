package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.together.CutSet;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.KeptOutcome;
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

class SetsCommandTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();
  private static final Failure HOLE = new Failure.SiphonBreakBlocked("return-break");
  private static final Failure DRAIN = new Failure.RunClogs("main-drain", Degree.FULLY);
  private static final CutSet TWO = new CutSet(List.of(POWER, HOLE), wet(0.034));
  private static final CutSet THREE = new CutSet(List.of(POWER, HOLE, DRAIN), wet(128.608));

  @TempDir private Path folder = Path.of("");

  private static KeptOutcome wet(double volume) {
    return new KeptOutcome(
        Verdict.WET,
        volume,
        List.of("plant-room"),
        OptionalDouble.of(130),
        new Ending.AtRest(240),
        new Outcome.Margin(Optional.of("sump"), -0.004, 95));
  }

  private static Desk desk() {
    return new Desk()
        .answers(
            Desk.answered(POWER, SampleOutcome.dry()),
            Desk.answered(HOLE, SampleOutcome.dry()),
            Desk.answered(DRAIN, SampleOutcome.dry()));
  }

  @Test
  void setsAreToldBySizeWithTheFailuresThatAreInMost() throws IOException {
    Desk desk = desk().sets(TWO, THREE);

    assertThat(desk.run("sets", drawing())).isEqualTo(1);
    assertThat(desk.out())
        .contains("The smallest sets of 3 failures", "0 of one, 1 of two and\n1 of three")
        .containsSubsequence(
            "Two together, most water first",
            "1  Power lost in the whole building + Siphon break blocked: 34 L on plant room floor",
            "first after 2 min 10 s.",
            "Three together, most water first",
            "Main drain clogged: 128\u00a0608 L on")
        .containsPattern("In most sets[\\s\\S]+Siphon break blocked +2")
        .contains(
            "Sets of three whose pairs are all dry: 9; 5 were simulated together", "Take care");
  }

  @Test
  void noSetEndsWithZero() throws IOException {
    Desk desk = desk();

    assertThat(desk.run("sets", drawing())).isZero();
    assertThat(desk.out()).contains("No three of 3 failures are known to wet a floor.");
  }

  @Test
  void aSetWithoutAnAnswerIsNeverDry() throws IOException {
    Desk desk =
        desk().openSets(new CutSetResult.Open(List.of(POWER, HOLE, DRAIN), "it took too long"));

    assertThat(desk.run("sets", drawing())).isEqualTo(3);
    assertThat(desk.out()).contains("No answer, which never counts as dry", "took too long");
  }

  @Test
  void fewCharactersAreEnough() throws IOException {
    Desk desk = desk().sets(TWO, THREE).in(new Ink(false, false));
    desk.run("sets", drawing());
    assertThat(desk.out()).contains("128 608 L");
    assertThat(desk.out().chars()).allMatch(character -> character < 128);
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = desk().sets(TWO, THREE);

    assertThat(desk.run("sets", drawing(), "--json")).isEqualTo(1);
    JsonNode root = JsonMapper.shared().readTree(desk.out());
    JsonNode three = root.path("drawings").path(0).path("sets").path(1);
    assertThat(root.path("kind").asString()).isEqualTo("sets");
    assertThat(three.path("failures").path(2).asString()).isEqualTo("clogged.main-drain");
    assertThat(three.path("reachedFloors_L").asDouble()).isEqualTo(128_608);
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
