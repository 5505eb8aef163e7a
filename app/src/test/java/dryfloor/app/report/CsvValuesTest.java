package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values for a spreadsheet: every place with its numbers, and nothing that acts as a formula. */
class CsvValuesTest {

  @Test
  void everyVesselFloorAndMovementHasALine() {
    Wording wording = Wording.of(SampleInstallation.get(), Units.METRIC);
    List<String> lines = CsvValues.of(wording, "Power lost", SampleOutcome.wet()).lines().toList();

    assertThat(lines)
        .filteredOn(line -> line.startsWith("vessel,"))
        .hasSize(SampleOutcome.wet().vessels().size());
    assertThat(lines)
        .filteredOn(line -> line.startsWith("floor,"))
        .hasSize(SampleOutcome.wet().floors().size());
    assertThat(lines).anyMatch(line -> line.startsWith("ledger,"));
    assertThat(lines).contains("failure,Power lost", "verdict,WET");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          Sump          | Sump
          =1+1          | '=1+1
          @SUM(A1)      | '@SUM(A1)
          -2            | '-2
          +cmd          | '+cmd
          a, b          | "a, b"
          say "go"      | "say ""go""\"
          """)
  void namesAreNeverFormulas(String name, String cell) {
    assertThat(CsvTable.text(name)).isEqualTo(cell);
    assertThat(CsvTable.text("\tx")).isEqualTo("'\tx");
    assertThat(CsvTable.text("\rx")).isEqualTo("\"'\rx\"");
  }

  @Test
  void numbersHaveAPointInEveryCountryAndNoMinusZero() {
    assertThat(CsvTable.number(1234.56, 1)).isEqualTo("1234.6");
    assertThat(CsvTable.number(-0.00001, 3)).isEqualTo("0.000");
  }
}
