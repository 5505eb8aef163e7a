package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.absence.GuardsAtWork;
import dryfloor.analysis.absence.LeftAlone;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.HowBad;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class AwayCommandTest {

  private static final double DAY = 86_400;

  private static final LeftAlone DRY =
      new LeftAlone.Known(
          new Failure.BuildingLosesPower(),
          List.of(0.0, 0.0),
          List.of(bad(3, 0), bad(3, 0)),
          OptionalDouble.empty(),
          Optional.empty());

  private static final LeftAlone WET_LATER =
      new LeftAlone.Known(
          new Failure.SeamLeaks("sump"),
          List.of(0.0, 0.25),
          List.of(bad(3, 0), bad(1, 0.25)),
          OptionalDouble.of(30 * 3600),
          Optional.of(
              new GuardsAtWork.Compared(
                  List.of("top-off-switch"),
                  0.25,
                  0.4,
                  OptionalDouble.of(30 * 3600),
                  OptionalDouble.of(20 * 3600))));

  private static final LeftAlone WORSE =
      new LeftAlone.Known(
          new Failure.PumpStops("return-pump"),
          List.of(0.04, 0.04),
          List.of(bad(1, 0.04), bad(1, 0.04)),
          OptionalDouble.of(90),
          Optional.of(
              new GuardsAtWork.Compared(
                  List.of("top-off-switch"),
                  0.04,
                  0,
                  OptionalDouble.of(90),
                  OptionalDouble.empty())));

  private static HowBad bad(int group, double reachedFloors) {
    return new HowBad(group, reachedFloors, 0, 0.02);
  }

  @TempDir private Path folder = Path.of("");

  @Test
  void theOwnerHearsTheWorstByThenAndWhatIsWorthWhat() throws IOException {
    Desk desk = new Desk().leftAlone(DRY, WET_LATER, WORSE);

    assertThat(desk.run("away", drawing(), "1d", "3d")).isEqualTo(ExitCode.FLOOR_WET.number());
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains(
            "3 failures, each just after you have left. Nobody is there, nobody acts."
                + " 2 wet a floor within 3 d.",
            "1 d 1 of 3 Return pump stops 40 L",
            "3 d 2 of 3 Sump leaks at a seam at the bottom 250 L",
            "1 min 30 s 40 L 40 L Return pump stops",
            "1 d 6 h dry 250 L Sump leaks at a seam at the bottom",
            "saves 150 L",
            "makes it worse: 40 L more",
            "Take care");
    assertThat(desk.out().indexOf("makes it worse")).isLessThan(desk.out().indexOf("saves 150 L"));
  }

  @Test
  void withoutTimesItAsksForANightALongWeekendAWeekAndAHoliday() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("away", drawing())).isZero();
    assertThat(desk.absencesAsked()).containsExactly(DAY, 3 * DAY, 7 * DAY, 14 * DAY);
  }

  @Test
  void aTimeThatIsNoneIsRefused() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("away", drawing(), "3 litres")).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(desk.run("away", drawing(), "0d")).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(desk.err()).contains("'0d' is no time to be away");
  }

  @Test
  void aFailureWithoutAnAnswerIsNotDry() throws IOException {
    Desk desk =
        new Desk().leftAlone(new LeftAlone.Unknown(new Failure.PumpStops("return-pump"), "lost"));
    assertThat(desk.run("away", drawing(), "3d")).isEqualTo(ExitCode.NO_ANSWER.number());
    assertThat(desk.out())
        .contains("No answer, which never counts as dry")
        .doesNotContain("None wets a floor");
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = new Desk().leftAlone(DRY, WET_LATER, WORSE);
    desk.run("away", drawing(), "1d", "3d", "--json");
    JsonNode told = JsonMapper.shared().readTree(desk.out()).path("drawings").path(0);

    assertThat(told.path("absences").path(0).path("worst").asString())
        .isEqualTo("pump-stops.return-pump");
    assertThat(told.path("absences").path(1).path("onFloors_L").asDouble()).isEqualTo(250);
    JsonNode later = told.path("failures").path(1);
    assertThat(later.path("firstWetFloor_s").asDouble()).isEqualTo(108_000);
    assertThat(later.path("onFloors_L").path(0).asDouble()).isZero();
    assertThat(later.path("guards").path("worth").asString()).isEqualTo("SAVES");
    assertThat(told.path("failures").path(0).has("guards")).isFalse();
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
