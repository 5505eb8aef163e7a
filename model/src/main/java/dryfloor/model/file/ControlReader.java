package dryfloor.model.file;

import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.part.Power;
import dryfloor.model.unit.QuantityKind;
import java.util.List;
import java.util.Optional;

/** Reads circuits, controls and the pumps that only stir. */
final class ControlReader {

  /** The word in {@code control} of every form of control. */
  static final List<Form> FORMS =
      List.of(Form.LEVEL_SWITCH, Form.LEAK_SENSOR, Form.TIMER, Form.HAND_SWITCH);

  private ControlReader() {}

  static Circuit circuit(Fields in) {
    String id = in.id();
    return new Circuit(
        id,
        in.nameOr(id),
        in.quantityOr("backup", QuantityKind.TIME, Sign.ZERO_OR_MORE, 0),
        in.optionalText("breaker"));
  }

  static CirculationPump circulationPump(Fields in) {
    String id = in.id();
    String vessel = in.reference("vessel", Referent.VESSEL);
    return new CirculationPump(
        id,
        in.nameOr(id),
        vessel,
        in.height("inlet", in.context().elevations().bottomOf(vessel)),
        in.quantity("flow", QuantityKind.FLOW, Sign.ABOVE_ZERO),
        in.object(
            "power", Form.POWER, PartReader::power, new Power("", Power.OnReturn.RESTARTS, 0)));
  }

  static Optional<Form> formOf(Located.Structure node) {
    return DrawnIds.textOf(node, "control")
        .flatMap(word -> FORMS.stream().filter(form -> form.word().equals(word)).findFirst());
  }

  static Control control(Fields in) {
    String id = in.id();
    String name = in.nameOr(id);
    return switch (in.text("control")) {
      case "levelSwitch" -> levelSwitch(in, id, name);
      case "leakSensor" ->
          new Control.LeakSensor(
              id,
              name,
              in.reference("in", Referent.FLOOR, Referent.VESSEL),
              in.quantity("depth", QuantityKind.LENGTH, Sign.ABOVE_ZERO),
              in.quantityOr("delay", QuantityKind.TIME, Sign.ZERO_OR_MORE, 0),
              drives(in));
      case "timer" ->
          new Control.Timer(
              id, name, in.quantity("longestRun", QuantityKind.TIME, Sign.ABOVE_ZERO), drives(in));
      default -> new Control.HandSwitch(id, name, in.truth("on"), drives(in));
    };
  }

  private static Control levelSwitch(Fields in, String id, String name) {
    String vessel = in.reference("in", Referent.FLOOR, Referent.VESSEL);
    double bottom = in.context().elevations().bottomOf(vessel);
    return new Control.LevelSwitch(
        id,
        name,
        vessel,
        in.height("lower", bottom),
        in.height("upper", bottom),
        in.choice("action", Control.LevelSwitch.Action.class),
        drives(in));
  }

  private static List<String> drives(Fields in) {
    return in.references("drives", Referent.PUMP, Referent.CIRCULATION_PUMP, Referent.VALVE);
  }
}
