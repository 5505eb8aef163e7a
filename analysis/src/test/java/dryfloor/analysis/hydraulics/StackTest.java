package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StackTest {

  private static final double US_GALLON_PER_MINUTE = 3.785411784e-3 / 60.0;

  /**
   * National Standard Plumbing Code (2006), table 13.6.1, note 1 "stacks flowing 7/24 full";
   * standard, read in the document. Half a gallon or 0.1 %, whichever is more, is the rounding of
   * the table.
   */
  @ParameterizedTest(name = "{0} in carries {1} US gal/min")
  @CsvSource({
    "2, 23",
    "3, 67",
    "4, 144",
    "5, 261",
    "6, 424",
    "8, 913",
    "10, 1655",
    "12, 2692",
    "15, 4880"
  })
  void carriesWhatThePlumbingCodeAllows(double inches, double gallonsPerMinute) {
    assertThat(Stack.filmFlow(inches * 0.0254, Stack.LEADER_SHARE) / US_GALLON_PER_MINUTE)
        .isCloseTo(gallonsPerMinute, within(Math.max(0.5, 0.001 * gallonsPerMinute)));
  }
}
