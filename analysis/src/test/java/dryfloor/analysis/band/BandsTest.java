package dryfloor.analysis.band;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Bands against every corner run one by one, and what may not change them. */
class BandsTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();
  private static final Set<Failure> SOME =
      Set.of(POWER_LOST, new Failure.PumpStops("return-pump"), new Failure.SeamLeaks("sump"));

  private static Installation house() {
    return OnlyWith.failures(new DisplayAboveSump().outletAt(0.45).plan().draw(), SOME::contains);
  }

  private static Measured threeValues() {
    return new Measured(house())
        .siphonBreak("siphon-break", 0.01)
        .level("chamber", 0.05)
        .crest("baffle", 0.005);
  }

  @Test
  void aBandSpansEveryCornerExactly() throws BaselineProblem {
    Measured measured = threeValues();
    BandResult result = Bands.of(measured, Optional.empty(), 2, Progress.NONE);

    assertThat(result.bands()).hasSize(SOME.size());
    for (Band band : result.bands()) {
      List<Figures> corners = everyCorner(measured, band.failure());
      List<Figures> all = new ArrayList<>(corners);
      all.add(band.drawn());
      assertThat(all).noneMatch(figures -> figures.isWorseThan(band.worst().figures()));
      assertThat(all).noneMatch(figures -> band.best().figures().isWorseThan(figures));
      assertThat(band.worst().figures())
          .isEqualTo(run(measured, band.worst().point(), band.failure()));
      assertThat(band.best().figures())
          .isEqualTo(run(measured, band.best().point(), band.failure()));
    }
  }

  /** Seven values have 128 corners; the search runs far fewer. */
  @Test
  void theSearchAmongManyValuesFindsTheWorstAndTheBestCorner() throws BaselineProblem {
    Measured measured =
        new Measured(OnlyWith.failures(house(), POWER_LOST::equals))
            .siphonBreak("siphon-break", 0.01)
            .level("chamber", 0.05)
            .crest("baffle", 0.005)
            .level("display", 0.004)
            .level("sump", 0.005)
            .bore("return", 0.002)
            .speed("return-pump", 0.05);
    BandResult result = Bands.of(measured, Optional.empty(), 2, Progress.NONE);

    assertThat(result.everyCorner()).isFalse();
    assertThat(result.points()).isLessThan(100);
    Band band = result.bands().getFirst();
    List<Figures> corners = everyCorner(measured, POWER_LOST);
    assertThat(corners).noneMatch(figures -> figures.isWorseThan(band.worst().figures()));
    assertThat(corners).noneMatch(figures -> band.best().figures().isWorseThan(figures));
  }

  @Test
  void theSameSeedGivesTheSameBitsOnAnyNumberOfThreads() throws BaselineProblem {
    Optional<Sampling> sampling = Optional.of(new Sampling(12, 7));
    BandResult one = Bands.of(threeValues(), sampling, 1, Progress.NONE);
    BandResult three = Bands.of(threeValues(), sampling, 3, Progress.NONE);
    assertThat(three).isEqualTo(one);
    assertThat(new Sampling(12, 8).points(3)).isNotEqualTo(new Sampling(12, 7).points(3));
  }

  /** The lower the break and the fuller the chamber, the more comes down: nothing turns between. */
  @Test
  void samplesOfWhatOnlyGoesOneWayLieWithinTheCorners() throws BaselineProblem {
    BandResult corners = Bands.of(threeValues(), Optional.empty(), 2, Progress.NONE);
    BandResult sampled =
        Bands.of(threeValues(), Optional.of(new Sampling(20, 1)), 2, Progress.NONE);

    Band band = of(corners, POWER_LOST);
    Band withSamples = of(sampled, POWER_LOST);
    assertThat(withSamples.onFloors()).isEqualTo(band.onFloors());
    assertThat(withSamples.worst()).isEqualTo(band.worst());
    assertThat(withSamples.best()).isEqualTo(band.best());
    assertThat(sampled.points()).isEqualTo(corners.points() + 20);
  }

  @Test
  void samplesAreCountedDryOnlyWhereNoFailureWetsAFloor() throws BaselineProblem {
    Sampled sampled =
        Bands.of(threeValues(), Optional.of(new Sampling(10, 3)), 2, Progress.NONE)
            .sampled()
            .orElseThrow();
    assertThat(sampled.dryAfter()).hasSize(SOME.size());
    assertThat(sampled.dry())
        .isLessThanOrEqualTo(sampled.dryAfter().values().stream().min(Integer::compare).get());
  }

  /** At 3 mm it is in doubt whether the hole breaks the siphon, at 6 mm it does. */
  @Test
  void aDoubtfulHoleIsToldAndItsWorseCourseCounts() throws BaselineProblem {
    Measured measured =
        new Measured(
                OnlyWith.failures(
                    new DisplayAboveSump().breakHole(0.0045).plan().draw(), POWER_LOST::equals))
            .breakHole("siphon-break", 0.0015);
    Band band = Bands.of(measured, Optional.empty(), 1, Progress.NONE).bands().getFirst();

    assertThat(band.inDoubt()).containsExactly("siphon-break");
    Figures.Known narrow = (Figures.Known) run(measured, new Point(List.of(-1.0)), POWER_LOST);
    Figures.Known wide = (Figures.Known) run(measured, new Point(List.of(1.0)), POWER_LOST);
    assertThat(narrow.inDoubt()).containsExactly("siphon-break");
    assertThat(wide.inDoubt()).isEmpty();
  }

  /** A display filled over its rim spills when all is well. */
  @Test
  void whereNormalOperationIsNotSoundNothingCountsAsDry() throws BaselineProblem {
    Measured measured =
        new Measured(OnlyWith.failures(house(), POWER_LOST::equals)).level("chamber", 0.25);
    BandResult result = Bands.of(measured, Optional.empty(), 1, Progress.NONE);

    assertThat(result.unsound()).hasSize(1);
    assertThat(result.unsound().getFirst().point()).isEqualTo(new Point(List.of(1.0)));
    assertThat(result.unsound().getFirst().drawable()).isTrue();
  }

  private static Band of(BandResult result, Failure failure) {
    return result.bands().stream()
        .filter(band -> band.failure().equals(failure))
        .findFirst()
        .orElseThrow();
  }

  private static List<Figures> everyCorner(Measured measured, Failure failure)
      throws BaselineProblem {
    List<Figures> corners = new ArrayList<>();
    for (int bits = 0; bits < 1 << measured.values(); bits++) {
      corners.add(run(measured, Point.corner(measured.values(), bits), failure));
    }
    return corners;
  }

  private static Figures run(Measured measured, Point point, Failure failure)
      throws BaselineProblem {
    Installation house = measured.at(point);
    assertThat(FailureCatalogue.of(house)).contains(failure);
    return Figures.of(Inquiry.of(house, () -> false).answer(List.of(failure)));
  }
}
