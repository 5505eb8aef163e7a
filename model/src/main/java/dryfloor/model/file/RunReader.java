package dryfloor.model.file;

import dryfloor.model.element.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads runs of pipe. */
final class RunReader {

  /**
   * Wall roughness of plastic pipe (m): White, Fluid Mechanics, table 6.1, "plastic, drawn tubing"
   * 0.0015 mm (from memory).
   */
  static final double SMOOTH_PLASTIC = 1.5e-6;

  private static final RunEnd NO_END = new RunEnd.AtJunction("");

  private RunReader() {}

  static Run run(Fields in) {
    String id = in.id();
    RunEnd from = in.variant("from", RunReader::formOfEnd, RunReader::end, NO_END);
    RunEnd to = in.variant("to", RunReader::formOfEnd, RunReader::end, NO_END);
    double length = in.quantity("length", QuantityKind.LENGTH, Sign.ABOVE_ZERO);
    List<Run.Waypoint> waypoints = waypoints(in, from, to, length);
    AlongRule rule =
        new AlongRule(from, to, endElevation(in, from), endElevation(in, to), length, waypoints);
    return new Run(
        id,
        in.nameOr(id),
        from,
        to,
        in.choice("duty", Run.Duty.class),
        in.quantity("bore", QuantityKind.LENGTH, Sign.ABOVE_ZERO),
        length,
        in.quantityOr("roughness", QuantityKind.LENGTH, Sign.ZERO_OR_MORE, SMOOTH_PLASTIC),
        in.has("fittings")
            ? in.object("fittings", Form.FITTINGS, RunReader::fittings, List.of())
            : List.of(),
        in.quantityOr("extraLoss", QuantityKind.NUMBER, Sign.ZERO_OR_MORE, 0),
        waypoints,
        PartReader.parts(in, rule),
        in.truthOr("vented", false),
        in.optionalReference("standsIn", Referent.FLOOR, Referent.VESSEL));
  }

  private static Optional<Form> formOfEnd(Located.Structure node) {
    List<Form> forms = new ArrayList<>();
    for (Form form :
        List.of(
            Form.END_AT_VESSEL,
            Form.END_AT_FLOOR,
            Form.END_AT_JUNCTION,
            Form.END_AT_SUPPLY,
            Form.END_AT_DRAIN)) {
      if (node.find(form.required().getFirst()).isPresent()) {
        forms.add(form);
      }
    }
    return forms.size() == 1 ? Optional.of(forms.getFirst()) : Optional.empty();
  }

  private static RunEnd end(Fields in) {
    if (in.has("vessel")) {
      String vessel = in.reference("vessel", Referent.VESSEL);
      return new RunEnd.Opening(
          vessel,
          in.height("at", in.context().elevations().bottomOf(vessel)),
          in.choice("opening", RunEnd.Opening.Kind.class));
    }
    if (in.has("floor")) {
      String floor = in.reference("floor", Referent.FLOOR);
      double base = in.context().elevations().bottomOf(floor);
      return new RunEnd.Opening(
          floor, in.heightOr("at", base, base), in.choiceOr("opening", RunEnd.Opening.Kind.PORT));
    }
    if (in.has("junction")) {
      return new RunEnd.AtJunction(in.reference("junction", Referent.JUNCTION));
    }
    return in.has("supply")
        ? new RunEnd.AtSupply(in.reference("supply", Referent.SUPPLY))
        : new RunEnd.AtDrain(in.reference("drain", Referent.DRAIN));
  }

  private static double endElevation(Fields in, RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening -> opening.elevation();
      case RunEnd.AtJunction junction -> in.context().elevations().pointOf(junction.at());
      case RunEnd.AtSupply supply -> in.context().elevations().pointOf(supply.at());
      case RunEnd.AtDrain drain -> in.context().elevations().pointOf(drain.at());
    };
  }

  private static List<Run.FittingCount> fittings(Fields in) {
    List<Run.FittingCount> counts = new ArrayList<>();
    for (Fitting fitting : Fitting.values()) {
      String word = Words.of(fitting);
      if (in.has(word)) {
        counts.add(new Run.FittingCount(fitting, in.count(word)));
      }
    }
    return counts;
  }

  /** A waypoint as written. */
  private record Written(double elevation, OptionalDouble along) {}

  private static List<Run.Waypoint> waypoints(Fields in, RunEnd from, RunEnd to, double length) {
    List<Written> written =
        in.listOrNone(
            "waypoints",
            Form.WAYPOINT,
            point ->
                new Written(
                    point.height("elevation", 0),
                    point.optionalQuantity("along", QuantityKind.LENGTH, Sign.ZERO_OR_MORE)));
    long placed = written.stream().filter(point -> point.along().isPresent()).count();
    if (placed != 0 && placed != written.size()) {
      in.reject(
          "waypoints",
          "some waypoints say how far along they are, others do not",
          "give 'along' to all waypoints of a run or to none");
      return List.of();
    }
    List<Double> elevations = new ArrayList<>();
    elevations.add(endElevation(in, from));
    written.forEach(point -> elevations.add(point.elevation()));
    elevations.add(endElevation(in, to));
    List<Double> spread = AlongRule.spread(elevations, length);
    List<Run.Waypoint> waypoints = new ArrayList<>();
    for (int i = 0; i < written.size(); i++) {
      Written point = written.get(i);
      waypoints.add(new Run.Waypoint(point.elevation(), point.along().orElse(spread.get(i + 1))));
    }
    return waypoints;
  }
}
