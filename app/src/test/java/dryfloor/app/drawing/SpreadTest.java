package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {

  @Test
  void thingsWithRoomEnoughStandWhereTheyWish() {
    assertThat(Spread.leftEnds(new double[] {1, 5}, new double[] {2, 2})).containsExactly(0, 4);
  }

  @Test
  void twoThatWishTheSamePlaceShareTheLoss() {
    assertThat(Spread.leftEnds(new double[] {3, 3}, new double[] {2, 2})).containsExactly(1, 3);
  }

  @Property
  void nothingEverOverlaps(
      @ForAll @Size(6) List<@DoubleRange(min = -10, max = 10) Double> wishes,
      @ForAll @Size(6) List<@DoubleRange(min = 0.1, max = 3) Double> spans) {
    double[] widths = spans.stream().mapToDouble(Double::doubleValue).toArray();
    double[] ends =
        Spread.leftEnds(wishes.stream().mapToDouble(Double::doubleValue).toArray(), widths);
    for (int i = 1; i < ends.length; i++) {
      assertThat(ends[i]).isGreaterThanOrEqualTo(ends[i - 1] + widths[i - 1] - 1e-9);
    }
  }
}
