package dryfloor.analysis.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SeverityScaleTest {

  @Test
  void linesMustRise() {
    assertThatThrownBy(() -> new SeverityScale(0.1, 0.05))
        .hasMessageContaining("the second above the first");
    assertThatThrownBy(() -> new SeverityScale(0, 0.05)).hasMessageContaining("above zero");
  }

  @Test
  void theStepsAreNumberedFromOneToFive() {
    assertThat(Severity.values()).extracting(Severity::step).containsExactly(1, 2, 3, 4, 5);
  }
}
