package dryfloor.model.file;

import dryfloor.model.FailureSettings;
import dryfloor.model.Sequence;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.unit.QuantityKind;

/** Writes circuits, controls, pumps that only stir, and what the user says about failures. */
record ControlWriter(Bases bases, RunWriter runs, Spelling spelling) {

  Sheet circuit(Circuit circuit) {
    return new Sheet(spelling)
        .put("id", circuit.id())
        .put("name", circuit.name())
        .quantity("backup", QuantityKind.TIME, circuit.backup())
        .put("breaker", circuit.breaker());
  }

  Sheet circulationPump(CirculationPump pump) {
    return new Sheet(spelling)
        .put("id", pump.id())
        .put("name", pump.name())
        .put("vessel", pump.vessel())
        .height("inlet", pump.inlet() - bases.of(pump.vessel()))
        .quantity("flow", QuantityKind.FLOW, pump.flow())
        .put("power", runs.power(pump.power()));
  }

  Sheet control(Control control) {
    return switch (control) {
      case Control.LevelSwitch level ->
          sheet(Form.LEVEL_SWITCH, level)
              .put("in", level.vessel())
              .height("lower", level.lower() - bases.of(level.vessel()))
              .height("upper", level.upper() - bases.of(level.vessel()))
              .word("action", level.action())
              .put("drives", level.drives());
      case Control.LeakSensor sensor ->
          sheet(Form.LEAK_SENSOR, sensor)
              .put("in", sensor.in())
              .length("depth", sensor.depth())
              .quantity("delay", QuantityKind.TIME, sensor.delay())
              .put("drives", sensor.drives());
      case Control.Timer timer ->
          sheet(Form.TIMER, timer)
              .quantity("longestRun", QuantityKind.TIME, timer.longestRun())
              .put("drives", timer.drives());
      case Control.HandSwitch hand ->
          sheet(Form.HAND_SWITCH, hand).put("on", hand.on()).put("drives", hand.drives());
    };
  }

  private Sheet sheet(Form form, Control control) {
    return new Sheet(spelling)
        .put("control", form.word())
        .put("id", control.id())
        .put("name", control.name());
  }

  Sheet failures(FailureSettings failures) {
    return new Sheet(spelling)
        .putIfAny(
            "skipped",
            failures.skipped().stream()
                .map(
                    skipped ->
                        new Sheet(spelling)
                            .put("failure", skipped.failure())
                            .put("reason", skipped.reason()))
                .toList())
        .putIfAny(
            "topUps",
            failures.topUps().stream()
                .map(
                    topUp ->
                        new Sheet(spelling)
                            .put("vessel", topUp.vessel())
                            .quantity("volume", QuantityKind.VOLUME, topUp.volume()))
                .toList())
        .putIfAny("sequences", failures.sequences().stream().map(this::sequence).toList())
        .quantity("dripArea", QuantityKind.AREA, failures.dripArea())
        .quantity("outage", QuantityKind.TIME, failures.outage())
        .number("surge", failures.surge());
  }

  private Sheet sequence(Sequence sequence) {
    return new Sheet(spelling)
        .put("id", sequence.id())
        .put("name", sequence.name())
        .put("events", sequence.events().stream().map(this::event).toList());
  }

  private Sheet event(Sequence.Event event) {
    Sheet sheet = new Sheet(spelling).quantity("at", QuantityKind.TIME, event.time());
    return switch (event) {
      case Sequence.Event.Begins begins -> sheet.put("begins", begins.failure());
      case Sequence.Event.Ends ends -> sheet.put("ends", ends.failure());
      case Sequence.Event.Pours pours ->
          sheet
              .quantity("pours", QuantityKind.VOLUME, pours.volume())
              .put("into", pours.vessel())
              .quantity("salinity", QuantityKind.SALINITY, pours.salinity());
      case Sequence.Event.Takes takes ->
          sheet
              .quantity("takes", QuantityKind.VOLUME, takes.volume())
              .put("from", takes.vessel())
              .length("downTo", takes.downTo());
    };
  }
}
