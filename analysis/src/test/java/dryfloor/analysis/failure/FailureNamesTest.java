package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FailureNamesTest {

  private static final Installation SHOWROOM = Showroom.installation();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          power-lost.building | Power lost in the whole building
          stuck-open.reservoir-float | Float valve of the reservoir stuck open
          joint-parts.return-line.chiller-union | Return line comes apart at the chiller union
          pump-against-shut-valve.return-pump.return-valve | Return pump works against the return valve, which was left shut
          stuck-low.top-off-switch | Top-off switch stuck calling for water
          stuck-low.high-switch | High-water switch stuck and does not see high water
          second-end-slips-out.top-off-line | Outlet of the top-off line slips out of the pump chamber
          second-end-sinks.return-line | Outlet of the return line sits deeper than drawn
          half-clogged.drain-line | Main drain clogged by half
          topped-up-while-stopped.sump | Sump topped up by hand while the pumps stand still
          left-open.fill-tap | Fill tap left open
          """)
  void aStrangerUnderstandsTheName(String id, String name) {
    Failure failure = FailureCatalogue.find(SHOWROOM, id).orElseThrow();
    assertThat(FailureNames.name(failure, SHOWROOM)).isEqualTo(name);
  }

  @Test
  void everyFailureHasItsOwnNameAndACauseAndASign() {
    List<Failure> all = FailureCatalogue.of(SHOWROOM);
    assertThat(all.stream().map(failure -> FailureNames.name(failure, SHOWROOM)))
        .doesNotHaveDuplicates();
    assertThat(all)
        .allSatisfy(
            failure -> {
              assertThat(FailureNames.cause(failure)).isNotBlank();
              assertThat(FailureTraits.howNoticed(failure, SHOWROOM)).isNotBlank();
            });
  }

  @ParameterizedTest
  @CsvSource({
    "chiller,the chiller",
    "chiller-union,the chiller union",
    "reservoir-float,the float valve of the reservoir",
    "mains,the mains water",
    "return-line,the return line"
  })
  void namesLoseTheirCapitalInsideASentence(String id, String inside) {
    assertThat(new ComponentNames(SHOWROOM).inside(id)).isEqualTo(inside);
  }

  @Test
  void aNameNeedsSomethingToName() {
    assertThatThrownBy(() -> FailureNames.name(new Failure.PumpStops("moat-pump"), SHOWROOM))
        .hasMessageContaining("\"moat-pump\"");
  }
}
