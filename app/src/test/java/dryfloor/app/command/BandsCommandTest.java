package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Figures;
import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Range;
import dryfloor.analysis.band.Sampled;
import dryfloor.analysis.band.Sampling;
import dryfloor.analysis.band.Swing;
import dryfloor.analysis.band.Weight;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.app.report.Ink;
import dryfloor.app.sample.SampleInstallation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BandsCommandTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();
  private static final Failure SEAM = new Failure.SeamLeaks("sump");

  private static final Figures DRY = new Figures.Known(Verdict.DRY, 0, 0, 0.012, List.of());
  private static final Figures WET =
      new Figures.Known(Verdict.WET, 0.0125, 0, -0.001, List.of("return-break"));

  private static final Point DRAWN = new Point(List.of(0.0));
  private static final Point LOW = new Point(List.of(-1.0));
  private static final Point HIGH = new Point(List.of(1.0));

  private static final Band HANGS =
      new Band(
          POWER,
          DRY,
          new Band.Reached(HIGH, WET),
          new Band.Reached(LOW, DRY),
          new Range(0, 0.0125),
          new Range(-0.001, 0.02),
          List.of(new Swing(0, 2, 0.0125, 0.021)),
          List.of("return-break"));

  private static final Band CERTAIN =
      new Band(
          SEAM,
          DRY,
          new Band.Reached(DRAWN, DRY),
          new Band.Reached(DRAWN, DRY),
          new Range(0, 0),
          new Range(0.012, 0.012),
          List.of(new Swing(0, 0, 0, 0)),
          List.of());

  @TempDir private Path folder = Path.of("");

  private static BandResult result(Optional<Sampled> sampled, Band... bands) {
    return new BandResult(
        List.of(bands), List.of(new Weight(0, 1, 0.0125, 0.021)), true, 3, List.of(), sampled);
  }

  @Test
  void theWorstAndTheBestAreToldWithWhereTheyAre() throws IOException {
    Desk desk = new Desk().bands(result(Optional.empty(), HANGS, CERTAIN));

    assertThat(desk.run("bands", uncertain())).isEqualTo(ExitCode.FLOOR_WET.number());
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains(
            "2 failures, with 1 value known within limits only: 0 leave a floor wet or without an"
                + " answer whatever the values, for 1 it hangs on them, 1 leaves every floor dry",
            "level of the sump 257 mm 262 mm 267 mm 1 13 L 21 mm",
            "WET ● DRY Power lost in the whole 0 L to 13 L −1 mm to 20 mm level of the sump",
            "DRY ● DRY Sump leaks at a seam at the 0 L 12 mm none bottom",
            "13 L on floors where the level of the sump is 267 mm; every floor dry where the level"
                + " of the sump is 257 mm; as drawn: DRY.",
            "the worse one counts",
            "Run at 3 points: as drawn, with each value alone at either end, and at every"
                + " combination of ends. Between the ends nothing was run",
            "Take care");
  }

  @Test
  void inInchesForThoseWhoMeasureInThem() throws IOException {
    Desk desk = new Desk().bands(result(Optional.empty(), HANGS));
    desk.run("bands", uncertain(), "--units", "us");
    assertThat(desk.out()).contains("10.118 in").doesNotContain(" mm");
  }

  @Test
  void dryWhateverTheValuesEndsWithZero() throws IOException {
    assertThat(new Desk().bands(result(Optional.empty(), CERTAIN)).run("bands", uncertain()))
        .isZero();
  }

  @Test
  void whereNothingCouldBeJudgedIsNeverDry() throws IOException {
    BandResult unsound =
        new BandResult(
            List.of(CERTAIN),
            List.of(new Weight(0, 0, 0, 0)),
            false,
            3,
            List.of(new BandResult.Unsound(HIGH, true, "the sump spills")),
            Optional.empty());
    Desk desk = new Desk().bands(unsound);

    assertThat(desk.run("bands", uncertain())).isEqualTo(ExitCode.NO_ANSWER.number());
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains(
            "Where the level of the sump is 267 mm: the sump spills",
            "Not every combination was run, so a worse or better one may have been missed.");
  }

  @Test
  void samplesAreAskedForByNumberAndSeedAndToldAsAShare() throws IOException {
    Sampled sampled = new Sampled(new Sampling(40, 9), 39, Map.of(POWER, 39, SEAM, 40));
    Desk desk = new Desk().bands(result(Optional.of(sampled), HANGS, CERTAIN));

    desk.run("bands", uncertain(), "--samples", "40", "--seed", "9");
    assertThat(desk.samplingAsked()).contains(new Sampling(40, 9));
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains(
            "dry of 40",
            "At 39 of 40 samples (seed 9) every floor stays dry whatever single thing fails: 97 %.",
            "a share of samples, not a probability");
  }

  @Test
  void withoutSamplesNoneAreAskedFor() throws IOException {
    Desk desk = new Desk().bands(result(Optional.empty(), CERTAIN));
    desk.run("bands", uncertain());
    assertThat(desk.samplingAsked()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "--samples, 0, it can be from 1 to 100000",
    "--samples, -3, it can be from 1 to 100000",
    "--seed, 4, say how many with --samples"
  })
  void whatCannotBeSampledIsToldWithWhatCan(String option, String value, String complaint)
      throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("bands", uncertain(), option + "=" + value))
        .isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(desk.err()).contains(complaint);
  }

  @Test
  void aDrawingThatIsExactHasNoBand() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("bands", DrawingFiles.sound(folder, "exact.json").toString()))
        .isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(desk.err())
        .contains("no value of this drawing carries a tolerance", "580 mm ± 5 mm");
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = new Desk().bands(result(Optional.empty(), HANGS, CERTAIN));

    assertThat(desk.run("bands", uncertain(), "--json")).isEqualTo(1);
    JsonNode drawing = JsonMapper.shared().readTree(desk.out()).path("drawings").path(0);
    JsonNode band = drawing.path("failures").path(0);
    assertThat(drawing.path("values").path(0).path("id").asString()).isEqualTo("sump.level");
    assertThat(band.path("worst").path("answer").asString()).isEqualTo("WET");
    assertThat(band.path("worst").path("at").path("sump.level").asString()).isEqualTo("267 mm");
    assertThat(band.path("best").path("answer").asString()).isEqualTo("DRY");
    assertThat(band.path("onFloors_L").path("to").asDouble()).isEqualTo(12.5);
    assertThat(band.path("mattersMost").asString()).isEqualTo("sump.level");
    assertThat(band.path("inDoubt").path(0).asString()).isEqualTo("return-break");
    assertThat(drawing.path("everyCorner").asBoolean()).isTrue();
    assertThat(drawing.has("samples")).isFalse();
  }

  @Test
  void fewCharactersAreEnough() throws IOException {
    Desk desk =
        new Desk().bands(result(Optional.empty(), HANGS, CERTAIN)).in(new Ink(false, false));
    desk.run("bands", uncertain());
    assertThat(desk.out().chars()).allMatch(character -> character < 128);
  }

  @Test
  void otherAnswersSayThatTheyTookTheValuesAsDrawnAndWhoTellsTheBand() throws IOException {
    for (String asked : new String[] {"check FILE", "tell FILE power-lost"}) {
      Desk desk = new Desk();
      desk.run(asked.replace("FILE", uncertain()).split(" ", -1));
      assertThat(desk.out().replaceAll("\\s+", " "))
          .contains(
              "Some quantities carry a tolerance, but this is for the values as drawn: 'dryfloor"
                  + " bands FILE' tells how bad and how good it can be.");
    }
    Desk exact = new Desk();
    exact.run("check", DrawingFiles.sound(folder, "exact.json").toString());
    assertThat(exact.out()).doesNotContain("tolerance");
  }

  private String uncertain() throws IOException {
    String text =
        SampleInstallation.text().replace("\"level\": \"262 mm\"", "\"level\": \"262 mm ± 5 mm\"");
    return Files.writeString(folder.resolve("shop.json"), text).toString();
  }
}
