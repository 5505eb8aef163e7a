package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;

import dryfloor.model.element.Drain;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;

/** Checks junctions and what stands for the world outside: supplies and drains. */
final class OutsideCheck {

  private final Drawing drawing;
  private final Findings findings;

  OutsideCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    drawing.installation().junctions().forEach(this::checkJunction);
    drawing.installation().supplies().forEach(this::checkSupply);
    drawing.installation().drains().forEach(this::checkDrain);
    if (drawing.installation().failureSettings().surge() < 1) {
      findings.error(
          "",
          "failures.surge",
          "a surge that lowers the pressure",
          "a factor of 1 or more, such as 1.5");
    }
  }

  private boolean isConnected(String id) {
    return !drawing.runsAt(id).isEmpty() || !drawing.unread().isEmpty();
  }

  private void checkJunction(Junction junction) {
    if (drawing.runsAt(junction.id()).size() < 2 && drawing.unread().isEmpty()) {
      findings.error(
          junction.id(),
          "",
          "fewer than two run ends meet at this junction",
          "two or more ends {\"junction\": \"" + junction.id() + "\"}, or no junction");
    }
  }

  private void checkSupply(Supply supply) {
    if (!isConnected(supply.id())) {
      findings.warning(
          supply.id(), "", "no run begins at this supply", "a run from it, or no supply");
    }
    switch (supply.protection()) {
      case NONE ->
          findings.warning(
              supply.id(),
              "protection",
              "nothing keeps the installation's water out of the supply",
              "an air gap or a backflow preventer; drinking water is protected by law in most"
                  + " places, ask a licensed plumber");
      case AIR_GAP -> drawing.runsAt(supply.id()).forEach(run -> checkAirGap(supply, run));
      case BACKFLOW_PREVENTER -> {}
    }
  }

  private void checkAirGap(Supply supply, Run run) {
    if (run.to() instanceof RunEnd.Opening opening
        && drawing
            .vessel(opening.at())
            .filter(vessel -> !exceeds(opening.elevation(), vessel.rim()))
            .isPresent()) {
      findings.warning(
          run.id(),
          "to.at",
          "the supply '" + supply.id() + "' has an air gap, but this end hangs below the rim",
          "an end above the rim of '" + opening.at() + "', or another protection");
    }
  }

  private void checkDrain(Drain drain) {
    if (!isConnected(drain.id())) {
      findings.warning(drain.id(), "", "no run leads to this drain", "a run to it, or no drain");
    }
    if (drain.surchargeLevel().isPresent()
        && exceeds(drain.elevation(), drain.surchargeLevel().getAsDouble())) {
      findings.error(
          drain.id(),
          "surchargeLevel",
          "the drain backs up to below its own inlet",
          "an elevation above that of the drain, or none");
    }
  }
}
