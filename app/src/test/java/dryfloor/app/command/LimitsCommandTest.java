package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Cost;
import dryfloor.analysis.limit.Decider;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.Mend;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.SafeRange;
import dryfloor.analysis.limit.Scale;
import dryfloor.analysis.limit.SingleChange;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LimitsCommandTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();
  private static final Failure WALL = new Failure.WallFails("sump");
  private static final Scale SUMP =
      new Scale(Scale.Kind.HEIGHT, -2.68, 1e-3, 1, 500, -2.68 + 0.262);
  private static final LimitAnswer LEVEL =
      new LimitAnswer.Found(
          new Property.RunningLevel("sump"),
          SUMP,
          List.of(upTo(301, new Decider.FloorWet(POWER))),
          List.of(new Mend(WALL, List.of(upTo(152, new Decider.FloorWet(WALL))))),
          OptionalDouble.of(SUMP.value(288)));
  private static final LimitAnswer HELD =
      new LimitAnswer.HeldByOthers(
          new Property.RunningLevel("display"),
          new Scale(Scale.Kind.HEIGHT, 0.85, 1e-3, 1, 700, 1.507),
          1.5068);

  @TempDir private Path folder = Path.of("");

  @Test
  void whatElseNoFailureMayDoIsAskedToldAndNamedWhereItDecides() throws IOException {
    LimitAnswer.Found level =
        new LimitAnswer.Found(
            new Property.RunningLevel("sump"),
            SUMP,
            List.of(
                new SafeRange(
                    SUMP.value(40),
                    new Decider.WaterLost(POWER, "display", 0.7849),
                    SUMP.value(301),
                    new Decider.SalinityOut(POWER, "display", 32.94))),
            List.of(),
            OptionalDouble.empty());
    Desk desk = new Desk().limits(level);

    assertThat(desk.run("limits", drawing(), "--keep", "80 %", "--salinity", "33 g/kg", "37 g/kg"))
        .isZero();
    assertThat(desk.out().replaceAll("\\s+", " "))
        .containsSubsequence(
            "ends with less than 80 % of its water",
            "outside of 33.0 g/kg to 37.0 g/kg",
            "At 302 mm, just above: Power lost in the whole building leaves the display at 32.94"
                + " g/kg",
            "At 39 mm, just below: Power lost in the whole building leaves the display with 78.4 %"
                + " of its");
  }

  @Test
  void volumesAreToldAsFinelyAsTheyAreFound() throws IOException {
    Scale litres = new Scale(Scale.Kind.VOLUME, 0, 1e-4, 1, 5000, 0.057);
    LimitAnswer.Found reservoir =
        new LimitAnswer.Found(
            new Property.ReservoirVolume("sump"),
            litres,
            List.of(
                new SafeRange(
                    litres.value(1),
                    new Decider.NotLookedAt(),
                    litres.value(643),
                    new Decider.FloorWet(POWER))),
            List.of(),
            OptionalDouble.empty());
    Desk desk = new Desk().limits(reservoir);

    assertThat(desk.run("limits", drawing())).isZero();
    assertThat(desk.out())
        .contains(
            "today 57.0 L", "Holds up to 64.3 L: 7.3 L left upwards", "At 64.4 L, just above");
  }

  @Test
  void whatCanNotBeAskedForIsRefusedWithWhatCan() throws IOException {
    Desk desk = new Desk().limits(LEVEL);

    assertThat(desk.run("limits", drawing(), "--keep", "120 %")).isEqualTo(2);
    assertThat(desk.run("limits", drawing(), "--salinity", "37 g/kg", "33 g/kg")).isEqualTo(2);
    assertThat(desk.run("limits", drawing(), "--salinity", "33 mm", "37 g/kg")).isEqualTo(2);
    assertThat(desk.err())
        .contains("give at most 100 %", "give the lower first", "--salinity: '33 mm'");
  }

  @Test
  void aLimitIsToldWithWhatDecidesItTheMarginTheMarkAndWhatItMends() throws IOException {
    Desk desk = new Desk().limits(LEVEL, HELD);

    assertThat(desk.run("limits", drawing())).isZero();
    assertThat(desk.out())
        .containsSubsequence(
            "Running level of the sump, today 262 mm  (running-level.sump)",
            "Holds up to 301 mm: 39 mm left upwards.",
            "At 302 mm, just above: Power lost in the whole building wets a floor",
            "it stands at 288 mm when running",
            "Mends \"Sump bursts and loses all its water at once\", which goes wrong today: up to",
            "152 mm",
            "Levels that an edge or a pipe sets",
            "Running level of the display: 657 mm",
            "Take care");
  }

  /** Nobody is to think that a value without a limit is one at which no floor gets wet. */
  @Test
  void whereThereIsNoLimitItIsToldThatNothingIsMended() throws IOException {
    LimitAnswer anyLevel =
        new LimitAnswer.Found(
            new Property.RunningLevel("sump"),
            SUMP,
            List.of(upTo(500, new Decider.NotLookedAt())),
            List.of(),
            OptionalDouble.empty());
    Desk desk = new Desk().answers(Desk.answered(WALL, SampleOutcome.wet())).limits(anyLevel);
    desk.run("limits", drawing());
    assertThat(desk.out().replaceAll("\\s+", " "))
        .containsSubsequence(
            "No limit within what was looked at",
            "Running level of the sump (1 mm to 500 mm)",
            "But none of these values mends the one failure that goes wrong today, which no value"
                + " is held against.");
  }

  private static SafeRange upTo(int millimetres, Decider end) {
    return new SafeRange(SUMP.value(1), new Decider.NotLookedAt(), SUMP.value(millimetres), end);
  }

  private static Remedy higherRim(Installation shop) {
    Scale rim = new Scale(Scale.Kind.HEIGHT, -2.68, 1e-3, 263, 1000, -2.68 + 0.5);
    SingleChange higher =
        new SingleChange.Moved(new Property.Rim("sump"), rim, rim.value(510), 0.01);
    return new Remedy(
        WALL,
        higher,
        higher.in(shop),
        List.of(
            new Cost.RunsElsewhere("sump", SUMP.value(262), SUMP.value(270)),
            new Cost.FlowsOtherwise("return-line", 5e-4, 4e-4)));
  }

  private static Remedy cutOff(Installation shop) {
    SingleChange added =
        new SingleChange.CutOffAdded(
            new Control.LevelSwitch(
                "added-cut-off",
                "Added high-level cut-off",
                "sump",
                SUMP.value(300),
                SUMP.value(400),
                Control.LevelSwitch.Action.STOPS_WHEN_HIGH,
                List.of("return-pump")));
    return new Remedy(
        WALL,
        added,
        added.in(shop),
        List.of(
            new Cost.MoreToFail(
                List.of(
                    Desk.answered(
                        new Failure.LevelSwitchStuckHigh("added-cut-off"), SampleOutcome.dry())))));
  }

  private Desk mending() throws IOException {
    Installation shop = ((Reading.Read) InstallationFile.read(Path.of(drawing()))).installation();
    return new Desk()
        .answers(Desk.answered(WALL, SampleOutcome.wet()))
        .limits(LEVEL)
        .mends(higherRim(shop), cutOff(shop));
  }

  @Test
  void whatMendsAFailureIsToldWithWhatItCostsElsewhere() throws IOException {
    Desk desk = mending();
    desk.run("limits", drawing());
    assertThat(desk.out())
        .containsSubsequence(
            "What one change mends",
            "Sump bursts and loses all its water at once",
            "- Rim of the sump: 510 mm in place of 500 mm",
            "The sump runs at 270 mm in place of 262 mm",
            "The return line carries 24 L/min in place of 30 L/min when all is well",
            "- Add a high-level cut-off to the sump that stops the return pump at 400 mm and lets"
                + " it",
            "It can fail itself, without wetting a floor:",
            "Running level of the sump, today 262 mm");
  }

  @Test
  void onlyWhatMendsOneFailureIsToldIfAskedFor() throws IOException {
    Desk desk = mending();
    assertThat(desk.run("limits", drawing(), "--mend", "wall-fails.sump")).isZero();
    assertThat(desk.out())
        .contains("- Rim of the sump: 510 mm in place of 500 mm", "sized and fitted")
        .doesNotContain("Running level of the sump, today");
    assertThat(desk.propertiesAsked()).isEmpty();
  }

  @Test
  void aFailureThatGoesWellHasNothingToMend() throws IOException {
    Desk desk = mending();
    assertThat(desk.run("limits", drawing(), "--mend", "power-lost.building")).isZero();
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains("Power lost in the whole building: this does nothing as drawn that it may not")
        .doesNotContain("No single change that was tried");
  }

  @Test
  void aFailureThatNothingMendsIsToldAsThat() throws IOException {
    Desk desk = mending().mends();
    assertThat(desk.run("limits", drawing(), "--mend", "wall-fails.sump")).isZero();
    assertThat(desk.out()).contains("No single change that was tried mends it");
  }

  @Test
  void aFailureToMendThatIsNotThereIsAnError() throws IOException {
    Desk desk = mending();
    assertThat(desk.run("limits", drawing(), "--mend", "lagoon")).isEqualTo(2);
    assertThat(desk.err()).contains("no failure is called 'lagoon'");
  }

  @Test
  void jsonTellsWhatMends() throws IOException {
    Desk desk = mending();
    desk.run("limits", drawing(), "--mend", "wall-fails.sump", "--json");
    JsonNode remedies =
        JsonMapper.shared().readTree(desk.out()).path("drawings").path(0).path("remedies");
    assertThat(remedies.path(0).path("kind").asString()).isEqualTo("NUMBER");
    assertThat(remedies.path(0).path("property").asString()).isEqualTo("rim.sump");
    assertThat(remedies.path(0).path("value_mm").asDouble()).isEqualTo(510);
    JsonNode flow = remedies.path(0).path("flows").path(0);
    assertThat(flow.path("run").asString()).isEqualTo("return-line");
    assertThat(flow.path("flow_L_per_min").asDouble()).isEqualTo(24);
    assertThat(flow.path("today_L_per_min").asDouble()).isEqualTo(30);
    assertThat(remedies.path(1).path("kind").asString()).isEqualTo("CUT_OFF");
    assertThat(remedies.path(1).path("added").asString()).isEqualTo("added-cut-off");
    assertThat(remedies.path(1).path("costs").size()).isEqualTo(1);
  }

  @Test
  void onlyWhatIsAskedForIsSearched() throws IOException {
    Desk desk = new Desk().limits(LEVEL);
    desk.run("limits", drawing(), "--of", "running-level.sump", "--of", "siphon-break");
    assertThat(desk.propertiesAsked())
        .containsExactly(
            new Property.RunningLevel("sump"), new Property.SiphonBreakHeight("return-break"));
  }

  @Test
  void whatIsNotThereIsAnErrorThatNamesWhatIs() throws IOException {
    Desk desk = new Desk().limits(LEVEL);
    assertThat(desk.run("limits", drawing(), "--of", "lagoon")).isEqualTo(2);
    assertThat(desk.err()).contains("nothing here has 'lagoon' in its id", "running-level.sump");
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = new Desk().limits(LEVEL, HELD);

    assertThat(desk.run("limits", drawing(), "--json")).isZero();
    JsonNode limit =
        JsonMapper.shared().readTree(desk.out()).path("drawings").path(0).path("limits").path(0);
    assertThat(limit.path("id").asString()).isEqualTo("running-level.sump");
    assertThat(limit.path("holds").path(0).path("to_mm").asDouble()).isEqualTo(301);
    assertThat(limit.path("holds").path(0).path("above").path("failure").asString())
        .isEqualTo("power-lost.building");
    assertThat(limit.path("mark_mm").asDouble()).isEqualTo(288);
    assertThat(limit.path("mends").path(0).path("failure").asString()).isEqualTo("wall-fails.sump");
  }

  @Test
  void aSearchThatWasCancelledHasNoAnswer() throws IOException {
    Desk desk =
        new Desk().limits(new LimitAnswer.Cancelled(new Property.RunningLevel("sump"), SUMP));
    assertThat(desk.run("limits", drawing())).isEqualTo(3);
    assertThat(desk.out()).contains("Not answered");
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
