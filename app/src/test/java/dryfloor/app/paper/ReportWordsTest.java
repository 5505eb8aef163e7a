package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The example of the first look, whose power loss and burst are worked out in its README. */
class ReportWordsTest {

  private static final Report METRIC =
      SampleReport.of(ShippedDrawing.read("first-look/as-drawn.json"), Units.METRIC);

  @Test
  void thePowerQuestionIsAnsweredWithRiseAndRoomLeft() {
    assertThat(METRIC.owner().power().verdict()).isEqualTo("● DRY");
    assertThat(METRIC.owner().power().sentence())
        .contains("The sump rises by 35 mm and stops 203 mm below its rim.");
    assertThat(METRIC.owner().powerPicture()).isPresent();
  }

  @Test
  void theWorstFailureSaysLitresFloorAndTimeToReact() {
    assertThat(METRIC.owner().worst())
        .hasValueSatisfying(
            worst -> {
              assertThat(worst.failure())
                  .isEqualTo("Display bursts and loses all its water at once");
              assertThat(worst.sentence())
                  .contains("618 L reach the hall floor", "plant room floor");
              assertThat(worst.time()).isEqualTo("none: the floor gets wet at once");
            });
  }

  @Test
  void theWaterOfTheWholeInstallationIsTold() {
    assertThat(METRIC.owner().installation())
        .startsWith("In all 1137 L of water stand in 4 vessels on 2 storeys: the display (820 L)");
  }

  @Test
  void nothingIsPromised() {
    String page = HtmlPages.of(METRIC);
    assertThat(page).doesNotContainIgnoringCase("flood-proof").doesNotContain("probab");
    assertThat(page).contains("It is no certificate", "How likely a failure is was not looked at");
  }

  @Test
  void theWorksheetHasEveryFailureWorstFirst() {
    assertThat(METRIC.worksheet().rows()).hasSize(49);
    assertThat(METRIC.worksheet().rows())
        .extracting(WorksheetRow::severity)
        .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    assertThat(METRIC.worksheet().rows())
        .filteredOn(row -> row.id().equals("parts-at-lowest-point.return-line"))
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.severity()).isEqualTo("4");
              assertThat(row.function()).isEqualTo("carries water from the sump to the display");
              assertThat(row.finalEffect()).contains("37 L reach the plant room floor");
              assertThat(row.occurrence()).isEmpty();
              assertThat(row.detection()).isEqualTo("water runs from the pipe");
            });
  }

  @Test
  void whatStopsAPumpIsAControlAndWhatStartsOneIsNone() {
    // A level switch starts the top-off pump at any time; only where it stops it does it guard.
    assertThat(METRIC.worksheet().rows())
        .filteredOn(row -> row.id().equals("seam-leaks.sump"))
        .singleElement()
        .satisfies(row -> assertThat(row.control()).doesNotContain("switch"));
  }

  @Test
  void theLocalEffectIsWhatHappensAtThePartThatFails() {
    assertThat(METRIC.worksheet().rows())
        .filteredOn(row -> row.id().equals("pump-seal-leaks.return-pump"))
        .singleElement()
        .satisfies(row -> assertThat(row.localEffect()).startsWith("The return pump sucks air"));
  }

  @Test
  void theLocalEffectOfARunThatComesApartIsWaterAndNotAir() {
    assertThat(METRIC.worksheet().rows())
        .filteredOn(row -> row.id().equals("joint-parts.return-line.pump-union"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row.localEffect())
                    .startsWith("Water runs out of the return line into the cellar vat"));
  }

  @Test
  void theLocalEffectOfAClogIsWhatRisesBehindIt() {
    assertThat(METRIC.worksheet().rows())
        .filteredOn(row -> row.id().equals("clogged.teeth"))
        .singleElement()
        .satisfies(
            row -> assertThat(row.localEffect()).startsWith("The display stands at its rim"));
  }

  @Test
  void whoRehearsesAPowerCutIsToldWhetherAndWhenToSwitchOnAgain() {
    assertThat(METRIC.rehearsals())
        .filteredOn(step -> step.failure().startsWith("Power lost in the whole building"))
        .extracting(Report.Rehearsal::cut)
        .containsExactly(
            "Switch off at the breaker with dry hands, and leave it off until the levels have been"
                + " read.",
            "Switch off at the breaker with dry hands, and on again after 30 min.");
  }

  @Test
  void whatFailsUnseenIsSeenWhenItsWaterStandsOnAFloor() {
    Report rooms =
        SampleReport.of(ShippedDrawing.read("research-rack-room/as-drawn.json"), Units.METRIC);
    assertThat(rooms.card().cases())
        .filteredOn(emergency -> emergency.finding().failure().startsWith("Laboratory drain"))
        .singleElement()
        .satisfies(
            emergency ->
                assertThat(emergency.seen())
                    .isEqualTo("nothing, until water stands on the rack room floor"));
    assertThat(rooms.worksheet().rows())
        .filteredOn(row -> row.mode().startsWith("Laboratory drain"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row.detection())
                    .isEqualTo("nothing, until water stands on the rack room floor"));
    assertThat(rooms.card().cases())
        .filteredOn(emergency -> emergency.finding().failure().equals("Top-off valve stuck open"))
        .singleElement()
        .satisfies(
            emergency ->
                assertThat(emergency.steps())
                    .containsExactly("Shut the house purified supply (Laboratory)."));
  }

  @Test
  void aPowerLossThatWetsTheFloorIsMendedFirst() {
    Report restaurant =
        SampleReport.of(ShippedDrawing.read("restaurant-seafood/as-drawn.json"), Units.METRIC);
    assertThat(restaurant.owner().power().verdict()).isEqualTo("▲ WET");
    assertThat(restaurant.owner().better().getFirst())
        .startsWith("Against \u201cPower lost in the whole building\u201d: keep freeboard");
  }

  @Test
  void theCardSaysWhatToSwitchOffAndHowLongThereIs() {
    assertThat(METRIC.card().cases())
        .filteredOn(
            emergency ->
                emergency.finding().failure().equals("Return line comes apart at its lowest point"))
        .singleElement()
        .satisfies(
            emergency -> {
              assertThat(emergency.steps().getFirst())
                  .startsWith("Switch off the plant room sockets at the breaker, with dry hands");
              assertThat(emergency.finding().time())
                  .isEqualTo("1 min 3 s until the first floor gets wet");
            });
  }

  @Test
  void theCardLeavesRoomToSayWhereTheBreakersAre() {
    assertThat(METRIC.card().breakers()).containsExactly("Plant room sockets");
  }

  @Test
  void theCardSaysWhereABreakerIsAndLeavesNoBlankForIt() throws IOException {
    String text =
        Files.readString(Path.of("..", "scenarios", "first-look", "as-drawn.json"))
            .replace(
                "\"name\": \"Plant room sockets\"",
                "\"name\": \"Plant room sockets\", \"breaker\": \"Board by the stairs, third\"");
    Installation told =
        switch (InstallationFile.readText(text, NamedFailures::check)) {
          case Reading.Read read -> read.installation();
          case Reading.Rejected rejected -> throw new AssertionError(rejected.problems());
        };

    Report.Card card = EmergencyWords.of(SampleReport.question(told, Units.METRIC));

    assertThat(card.breakers()).isEmpty();
    assertThat(card.cases())
        .flatExtracting(Report.Emergency::steps)
        .anySatisfy(
            step ->
                assertThat(step)
                    .contains("Switch off the plant room sockets at the breaker (Board by the")
                    .contains("stairs, third), with dry hands"));
  }

  @Test
  void whatMustStayDryIsOnTheRehearsalSheet() {
    assertThat(METRIC.rehearsals())
        .isNotEmpty()
        .allSatisfy(
            one -> {
              assertThat(one.dry()).containsExactly("Display pan", "Cellar vat");
              assertThat(one.levels())
                  .extracting(Report.Expected::vessel)
                  .doesNotContain("Display pan", "Cellar vat");
            });
  }

  @Test
  void theMarksTellHowHighTheSumpMayRun() {
    assertThat(METRIC.marks())
        .filteredOn(mark -> mark.vessel().equals("Sump"))
        .singleElement()
        .satisfies(
            mark -> {
              assertThat(mark.normal()).isEqualTo("262 mm (238 mm below the rim)");
              // As the limits tell: at 302 mm the main drain, come apart, wets the floor.
              assertThat(mark.highest()).startsWith("301 mm");
              assertThat(mark.afterPowerLoss()).startsWith("297 mm");
            });
  }

  @Test
  void levelsAreDrawnForEachVesselThatMoves() {
    assertThat(METRIC.courses().getFirst().plots())
        .extracting(Picture::label)
        .containsExactly(
            "Level over time: Display", "Level over time: Overflow box", "Level over time: Sump");
    assertThat(METRIC.courses().getFirst().movements())
        .contains(new Report.Way("Overflow box", "Sump", "through the main drain", "29 L"));
  }

  @Test
  void whoeverThinksInGallonsGetsGallons() {
    Report us = SampleReport.of(ShippedDrawing.read("first-look/as-drawn.json"), Units.US);
    assertThat(us.owner().installation()).startsWith("In all 300 gal of water");
    assertThat(us.worksheet().scale()).anyMatch(step -> step.meaning().contains("gal"));
    String page = HtmlPages.of(us).replaceAll("(?s)<style>.*?</style>", "");
    assertThat(page).doesNotContainPattern("[0-9] ?(mm|cm|L|L/h)\\b");
  }

  @Test
  void whereNoLevelMovesThereIsNothingToRehearse() {
    assertThat(METRIC.rehearsals())
        .extracting(Report.Rehearsal::failure)
        .doesNotContain("Top-off pump stops");
  }

  @Test
  void whatIsRehearsedIsSafeAndSaysWhenToStop() {
    assertThat(METRIC.rehearsals())
        .extracting(Report.Rehearsal::failure)
        .contains("Power lost in the whole building", "Return pump stops")
        .noneMatch(failure -> failure.contains("comes apart") || failure.contains("bursts"));
    Report.Rehearsal power =
        METRIC.rehearsals().stream()
            .filter(one -> one.failure().equals("Power lost in the whole building"))
            .findFirst()
            .orElseThrow();
    // The sump is to stop 203 mm below its rim; 10 mm higher the rehearsal is broken off.
    assertThat(power.cut()).startsWith("Switch off at the breaker with dry hands");
    assertThat(power.levels())
        .contains(new Report.Expected("Sump", "238 mm", "203 mm", "± 5 mm", "193 mm"));
  }
}
