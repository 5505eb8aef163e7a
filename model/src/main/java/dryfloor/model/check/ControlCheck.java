package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Checks controls, circuits and the pumps that only stir. */
final class ControlCheck {

  private final Drawing drawing;
  private final Findings findings;

  ControlCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    drawing.installation().circulationPumps().forEach(this::checkInlet);
    drawing.installation().controls().forEach(this::check);
    checkCircuits(drawing.installation());
  }

  private void checkInlet(CirculationPump pump) {
    boolean outside =
        exceeds(pump.inlet(), drawing.rimOf(pump.vessel()))
            || exceeds(drawing.bottomOf(pump.vessel()), pump.inlet());
    if (outside) {
      findings.error(
          pump.id(),
          "inlet",
          "the inlet lies outside '" + pump.vessel() + "'",
          "a height between its inside bottom and its rim");
    } else if (drawing
        .vessel(pump.vessel())
        .filter(vessel -> exceeds(pump.inlet(), vessel.level()))
        .isPresent()) {
      findings.warning(
          pump.id(),
          "inlet",
          "the inlet lies above the water in normal operation",
          "a height below the level of '" + pump.vessel() + "'");
    }
  }

  private void check(Control control) {
    switch (control) {
      case Control.LevelSwitch level -> {
        checkLevels(level);
        checkCalls(level);
      }
      case Control.LeakSensor sensor -> checkSensor(sensor);
      case Control.Timer timer -> {}
      case Control.HandSwitch hand -> {}
    }
    if (control.drives().isEmpty()) {
      findings.warning(
          control.id(), "drives", "the control switches nothing", "the ids of what it switches");
    }
  }

  private void checkLevels(Control.LevelSwitch level) {
    if (level.lower() >= level.upper()) {
      findings.error(
          level.id(),
          "lower",
          "the lower switching level is not below the upper",
          "a lower level below the upper one, the difference being its hysteresis");
    }
    checkInside(level, "lower", level.lower());
    checkInside(level, "upper", level.upper());
  }

  private void checkInside(Control.LevelSwitch level, String field, double elevation) {
    if (exceeds(elevation, drawing.rimOf(level.vessel()))) {
      findings.error(
          level.id(),
          field,
          "the level lies "
              + length(elevation - drawing.rimOf(level.vessel()))
              + " above the rim of '"
              + level.vessel()
              + "'",
          "a level between its inside bottom and its rim");
    }
    if (exceeds(drawing.bottomOf(level.vessel()), elevation)) {
      findings.error(
          level.id(),
          field,
          "the level lies below the bottom of '" + level.vessel() + "'",
          "a level between its inside bottom and its rim");
    }
  }

  /** A switch that calls for water must get some. */
  private void checkCalls(Control.LevelSwitch level) {
    boolean calls =
        switch (level.action()) {
          case FILLS, EMPTIES -> true;
          case STOPS_WHEN_HIGH, STOPS_WHEN_LOW, LOCKS_OUT_WHEN_HIGH, LOCKS_OUT_WHEN_LOW -> false;
        };
    for (int i = 0; calls && i < level.drives().size(); i++) {
      if (drawing.parts().get(level.drives().get(i)) instanceof Part.Valve valve
          && valve.opening() == 0) {
        findings.error(
            level.id(),
            "drives[" + i + "]",
            "'" + valve.id() + "' is open by 0 % when it is called for, so nothing ever flows",
            "opening is how far it opens when called for, such as 100 %; without a call it is shut");
      }
    }
  }

  private void checkSensor(Control.LeakSensor sensor) {
    if (exceeds(sensor.depth(), drawing.rimOf(sensor.in()) - drawing.bottomOf(sensor.in()))) {
      findings.error(
          sensor.id(),
          "depth",
          "the sensor would trip only above the rim of '" + sensor.in() + "'",
          "a depth that water can reach there, such as \"5 mm\"");
    }
    drawing
        .vessel(sensor.in())
        .filter(vessel -> vessel.level() - vessel.bottom() >= sensor.depth())
        .ifPresent(
            vessel ->
                findings.error(
                    sensor.id(),
                    "in",
                    "the sensor lies under water in normal operation",
                    "a basin or floor that is dry in normal operation"));
  }

  private void checkCircuits(Installation installation) {
    Set<String> used =
        Stream.concat(
                installation.circulationPumps().stream().map(CirculationPump::power),
                drawing.parts().values().stream()
                    .map(ReferenceCheck::powerOf)
                    .flatMap(Optional::stream))
            .map(Power::circuit)
            .collect(Collectors.toSet());
    for (Circuit circuit : installation.circuits()) {
      if (!used.contains(circuit.id()) && drawing.unread().isEmpty()) {
        findings.warning(
            circuit.id(), "", "the circuit feeds nothing", "the circuit of a pump or valve");
      }
    }
  }
}
