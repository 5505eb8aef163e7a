package dryfloor.model.file;

import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Reads the parts of one run, in order; each may lean on where the one before it sits. */
final class PartReader {

  private static final Power NO_POWER = new Power("", Power.OnReturn.RESTARTS, 0);

  private final AlongRule rule;
  private double reached;
  private double ahead;

  private PartReader(AlongRule rule) {
    this.rule = rule;
  }

  static List<Part> parts(Fields run, AlongRule rule) {
    if (!run.has("parts")) {
      return List.of();
    }
    PartReader reader = new PartReader(rule);
    List<Part> parts = new ArrayList<>();
    List<Located> items = run.items("parts");
    for (int i = 0; i < items.size(); i++) {
      reader.ahead = placeOfNext(items.subList(i + 1, items.size()));
      run.variantItem(items.get(i), PartReader::formOf, reader::part).ifPresent(parts::add);
    }
    return parts;
  }

  /** How far along (m) the next part sits that says so; endless if none does. */
  private static double placeOfNext(List<Located> later) {
    return later.stream()
        .filter(Located.Structure.class::isInstance)
        .flatMap(item -> DrawnIds.textOf((Located.Structure) item, "along").stream())
        .map(HeightText::parse)
        .filter(HeightText.Plain.class::isInstance)
        .findFirst()
        .map(along -> ((HeightText.Plain) along).metres())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The word in {@code part} of every form of part. */
  static final List<Form> FORMS =
      List.of(
          Form.PUMP,
          Form.VALVE,
          Form.FLOAT_VALVE,
          Form.CHECK_VALVE,
          Form.SIPHON_BREAK,
          Form.JOINT,
          Form.STRAINER,
          Form.RESTRICTOR,
          Form.DEVICE);

  private static Optional<Form> formOf(Located.Structure node) {
    return DrawnIds.textOf(node, "part")
        .flatMap(word -> FORMS.stream().filter(form -> form.word().equals(word)).findFirst());
  }

  private Part part(Fields in) {
    String id = in.id();
    String name = in.nameOr(id);
    return switch (in.text("part")) {
      case "pump" -> pump(in, id, name);
      case "valve" -> valve(in, id, name);
      case "floatValve" -> floatValve(in, id, name);
      case "checkValve" ->
          new Part.CheckValve(id, name, along(in, () -> 0), headOf(in, "crackingHead"), loss(in));
      case "siphonBreak" -> siphonBreak(in, id, name);
      case "joint" -> joint(in, id, name);
      case "strainer" -> new Part.Strainer(id, name, along(in, () -> 0), loss(in));
      case "restrictor" -> new Part.Restrictor(id, name, along(in, () -> 0), kv(in));
      default -> device(in, id, name);
    };
  }

  private double along(Fields in, DoubleSupplier usual) {
    double along =
        in.has("along")
            ? in.quantity("along", QuantityKind.LENGTH, Sign.ZERO_OR_MORE)
            : Math.max(reached, Math.min(ahead, usual.getAsDouble()));
    if (Double.isFinite(along)) {
      reached = along;
    }
    return along;
  }

  private Part pump(Fields in, String id, String name) {
    Part.Pump.Kind kind = in.choiceOr("kind", Part.Pump.Kind.CENTRIFUGAL);
    return new Part.Pump(
        id,
        name,
        along(in, () -> 0),
        Pair.readAll(in, "curve", QuantityKind.FLOW, QuantityKind.HEAD, Sign.ZERO_OR_MORE).stream()
            .map(pair -> new Part.Pump.CurvePoint(pair.first(), pair.second()))
            .toList(),
        in.quantityOr("speed", QuantityKind.FRACTION, Sign.ABOVE_ZERO, 1),
        kind,
        in.object("power", Form.POWER, PartReader::power, NO_POWER),
        switch (kind) {
          case CENTRIFUGAL -> in.quantity("stoppedLoss", QuantityKind.NUMBER, Sign.ZERO_OR_MORE);
          case DISPLACEMENT ->
              in.quantityOr("stoppedLoss", QuantityKind.NUMBER, Sign.ZERO_OR_MORE, 0);
        },
        in.truthOr("primesAgain", true),
        standsIn(in));
  }

  static Power power(Fields in) {
    return new Power(
        in.reference("circuit", Referent.CIRCUIT),
        in.choiceOr("onReturn", Power.OnReturn.RESTARTS),
        in.quantityOr("delay", QuantityKind.TIME, Sign.ZERO_OR_MORE, 0));
  }

  private Part valve(Fields in, String id, String name) {
    double along = along(in, () -> 0);
    double kv = kv(in);
    double opening = in.quantityOr("opening", QuantityKind.FRACTION, Sign.ZERO_OR_MORE, 1);
    if (in.has("hand") == in.has("powered")) {
      in.reject(
          "hand",
          "a valve is moved either by hand or by power",
          "give 'hand' with its use such as \"isolate\", or 'powered' with its circuit and rest");
    }
    return new Part.Valve(id, name, along, kv, opening, drive(in));
  }

  private static Part.Valve.Drive drive(Fields in) {
    if (in.has("powered")) {
      return in.object(
          "powered",
          Form.VALVE_POWER,
          powered ->
              new Part.Valve.Drive.Powered(
                  power(powered), powered.choice("rest", Part.Valve.Rest.class)),
          new Part.Valve.Drive.Powered(NO_POWER, Part.Valve.Rest.CLOSED));
    }
    return new Part.Valve.Drive.Hand(in.choiceOr("hand", Part.Valve.Use.ISOLATE));
  }

  private Part floatValve(Fields in, String id, String name) {
    String vessel = in.reference("vessel", Referent.VESSEL);
    return new Part.FloatValve(
        id,
        name,
        along(in, rule::length),
        kv(in),
        vessel,
        in.height("closesAt", in.context().elevations().bottomOf(vessel)),
        in.quantity("band", QuantityKind.LENGTH, Sign.ABOVE_ZERO));
  }

  private Part siphonBreak(Fields in, String id, String name) {
    Optional<String> coveredBy = in.optionalReference("coveredBy", Referent.VESSEL);
    double elevation =
        in.height("at", coveredBy.map(in.context().elevations()::bottomOf).orElse(0.0));
    return new Part.SiphonBreak(
        id,
        name,
        along(in, () -> rule.siphonBreakAt(elevation, coveredBy.orElse(""))),
        elevation,
        in.quantity("diameter", QuantityKind.LENGTH, Sign.ABOVE_ZERO),
        in.has("count") ? in.count("count") : 1,
        coveredBy);
  }

  private Part joint(Fields in, String id, String name) {
    double elevation = in.height("elevation", 0);
    return new Part.Joint(
        id,
        name,
        along(in, () -> rule.firstAt(elevation)),
        elevation,
        in.choice("kind", Part.Joint.Kind.class),
        standsIn(in));
  }

  private Part device(Fields in, String id, String name) {
    double elevation = in.height("elevation", 0);
    return new Part.Device(
        id,
        name,
        along(in, () -> rule.firstAt(elevation)),
        in.choice("kind", Part.Device.Kind.class),
        elevation,
        loss(in),
        in.quantityOr("holds", QuantityKind.VOLUME, Sign.ZERO_OR_MORE, 0),
        in.optionalQuantity("cupOverflow", QuantityKind.FLOW, Sign.ABOVE_ZERO),
        standsIn(in));
  }

  private static Optional<String> standsIn(Fields in) {
    return in.optionalReference("standsIn", Referent.FLOOR, Referent.VESSEL);
  }

  private static double loss(Fields in) {
    return in.quantity("loss", QuantityKind.NUMBER, Sign.ZERO_OR_MORE);
  }

  private static double kv(Fields in) {
    return in.quantity("kv", QuantityKind.VALVE_COEFFICIENT, Sign.ABOVE_ZERO);
  }

  private static double headOf(Fields in, String field) {
    return in.quantity(field, QuantityKind.HEAD, Sign.ZERO_OR_MORE);
  }
}
