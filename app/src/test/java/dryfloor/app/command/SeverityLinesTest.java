package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.analysis.worksheet.SeverityScale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

/** Somebody moves the lines of the scale of severity. */
class SeverityLinesTest {

  @Test
  void twoVolumesAreTheLines() {
    assertThat(new SeverityLines().convert("20L, 0.2 m3"))
        .isEqualTo(new SeverityScale(0.020, 0.200));
  }

  @ParameterizedTest
  @ValueSource(strings = {"10L", "10L,", ",100L", "10L,20L,30L", "10L,5L", "0L,5L", "10L,much"})
  void anythingElseIsRefusedAndNotGuessed(String text) {
    assertThatThrownBy(() -> new SeverityLines().convert(text))
        .isInstanceOf(TypeConversionException.class)
        .hasMessageContaining("'" + text + "'");
  }
}
