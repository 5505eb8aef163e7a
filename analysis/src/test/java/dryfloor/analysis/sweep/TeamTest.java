package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TeamTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4})
  void whatATaskThrowsComesToWhoeverAskedWhicheverThreadHadIt(int threads) {
    assertThatThrownBy(
            () ->
                Team.share(
                    100,
                    threads,
                    Progress.NONE,
                    task -> {
                      if (task >= 40) {
                        throw new OutOfMemoryError("task " + task);
                      }
                    }))
        .isInstanceOf(OutOfMemoryError.class);
  }
}
