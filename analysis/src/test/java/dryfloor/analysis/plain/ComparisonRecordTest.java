package dryfloor.analysis.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The record of the full comparison holds no unexplained difference and is not out of date. */
class ComparisonRecordTest {

  /** What the engine's answers may have moved by since (m, m³ and share). */
  private static final double LEVEL = 0.1e-3;

  private static final double WATER = 1e-5;
  private static final double SHARE = 1e-3;

  private static final List<ComparisonRecord.Line> RECORD = ComparisonRecord.read();

  @Test
  void everyDifferenceOnRecordIsExplained() {
    assertThat(SecondOpinion.compared(RECORD))
        .filteredOn(both -> !both.agrees() && Explained.of(both).isEmpty())
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void everyExplanationIsNeeded(Explained reason) {
    assertThat(SecondOpinion.compared(RECORD))
        .anyMatch(both -> !both.agrees() && reason.explains(both));
  }

  @Test
  void noFailureOfADrawingOnRecordIsLeftOut() {
    List<String> scenarios =
        RECORD.stream().map(line -> line.entry().scenario()).distinct().toList();
    assertThat(scenarios).isNotEmpty();
    for (String scenario : scenarios) {
      List<String> onRecord = of(scenario).map(line -> line.entry().failure()).toList();
      assertThat(onRecord)
          .as(scenario)
          .containsExactlyElementsOf(
              Stream.concat(
                      Stream.of(TwoAnswers.NORMAL),
                      FailureCatalogue.of(Shipped.named(scenario)).stream().map(FailureNames::id))
                  .toList());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-look/as-drawn",
        "first-look/corrected",
        "loft-reservoir/as-drawn",
        "loft-reservoir/corrected",
        "restaurant-seafood/corrected",
        "research-rack-room/corrected",
        "coral-nursery/corrected",
        "tape-measure/as-drawn",
        "tape-measure/corrected"
      })
  void theEngineStillAnswersWhatIsOnRecord(String scenario) {
    Installation drawing = Shipped.named(scenario);
    EngineAnswers engine = new EngineAnswers(drawing);
    List<Comparison> onRecord = SecondOpinion.compared(of(scenario).toList());
    assertThat(onRecord).isNotEmpty();
    for (Comparison both : onRecord) {
      Outcome today = engine.outcome(both.failure());
      Comparison.Difference level = both.level();
      Comparison.Difference water = both.water();
      assertThat(today.verdict()).as(both.failure()).isEqualTo(both.engine());
      assertThat(EngineAnswers.level(today, level.where()))
          .as("level of '%s' in %s", level.where(), both.failure())
          .isCloseTo(level.engine(), within(LEVEL));
      assertThat(EngineAnswers.water(today, water.where()))
          .as("water at '%s' in %s", water.where(), both.failure())
          .isCloseTo(water.engine(), within(WATER + SHARE * water.engine()));
    }
  }

  private static Stream<ComparisonRecord.Line> of(String scenario) {
    return RECORD.stream().filter(line -> line.entry().scenario().equals(scenario));
  }
}
