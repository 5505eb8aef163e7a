package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Effect.CircuitOff;
import dryfloor.analysis.failure.Effect.CircuitOn;
import dryfloor.analysis.installation.InTurn;
import dryfloor.model.check.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When power goes and comes back in a sequence, and which failures its events may name. */
class SequenceEffectsTest {

  private static final String POWER = "power-lost.building";
  private static final InTurn SHOWROOM = InTurn.in(Showroom.installation());

  @Test
  void aBackupIsFullAgainWhenPowerIsLostForTheSecondTime() {
    double backup = backupOf("life");
    assertThat(backup).isGreaterThan(0);
    assertThat(power(SHOWROOM.begins(0, POWER).ends(1e5, POWER).begins(2e5, POWER), "life"))
        .containsExactly(
            new CircuitOff("life", backup),
            new CircuitOn("life", 1e5),
            new CircuitOff("life", 2e5 + backup));
  }

  @Test
  void aCutThatTheBackupBridgesIsNone() {
    double backup = backupOf("life");
    assertThat(power(SHOWROOM.begins(0, POWER).ends(backup / 2, POWER), "life")).isEmpty();
  }

  @Test
  void aCircuitStaysOffAsLongAsAnythingKeepsItOff() {
    InTurn events =
        SHOWROOM
            .begins(0, POWER)
            .begins(100, "circuit-trips.main")
            .ends(200, POWER)
            .ends(300, "circuit-trips.main");
    assertThat(power(events, "main"))
        .containsExactly(new CircuitOff("main", 0), new CircuitOn("main", 300));
  }

  @Test
  void aFailureThatTheDrawingCannotHaveIsToldAtItsEvent() {
    assertThat(EventFailures.check(SHOWROOM.begins(0, "clogged.teef").drawing()))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.field()).isEqualTo("failures.sequences[1].events[0].begins");
              assertThat(finding.severity()).isEqualTo(Finding.Severity.ERROR);
              assertThat(finding.message()).contains("'clogged.teef'");
              assertThat(finding.remedy()).contains("dryfloor list").contains("clogged.");
            });
  }

  @Test
  void aSequenceOfUnknownFailuresIsInNoList() {
    assertThat(
            FailureCatalogue.find(SHOWROOM.begins(0, "clogged.teef").drawing(), "sequence.in-turn"))
        .isEmpty();
    assertThat(FailureCatalogue.find(SHOWROOM.begins(0, POWER).drawing(), "sequence.in-turn"))
        .isPresent();
  }

  @Test
  void aSequenceCannotMakeUpItsOwnUnattendedTime() {
    assertThat(EventFailures.check(SHOWROOM.begins(0, "nobody-comes-back.building").drawing()))
        .singleElement()
        .satisfies(finding -> assertThat(finding.remedy()).contains("\"away\""));
  }

  private static double backupOf(String circuit) {
    return Showroom.installation().circuits().stream()
        .filter(c -> c.id().equals(circuit))
        .findFirst()
        .orElseThrow()
        .backup();
  }

  private static List<Effect> power(InTurn events, String circuit) {
    return FailureResolver.resolve(events.drawing(), InTurn.failure()).stream()
        .filter(
            effect ->
                (effect instanceof CircuitOff off && off.circuit().equals(circuit))
                    || (effect instanceof CircuitOn on && on.circuit().equals(circuit)))
        .toList();
  }
}
