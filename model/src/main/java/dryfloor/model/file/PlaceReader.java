package dryfloor.model.file;

import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.shape.Shape;
import dryfloor.model.unit.QuantityKind;
import java.util.OptionalDouble;

/**
 * Reads what holds water or stands for the outside.
 *
 * @param salinity of the installation's water (g/kg), for vessels that do not say their own
 */
record PlaceReader(double salinity) {

  static Storey storey(Fields in) {
    String id = in.id();
    return new Storey(
        id,
        in.nameOr(id),
        in.height("elevation", 0),
        in.quantity("height", QuantityKind.LENGTH, Sign.ABOVE_ZERO));
  }

  static Floor floor(Fields in) {
    String id = in.id();
    String storey = in.reference("storey", Referent.STOREY);
    double base = in.context().elevations().bottomOf(storey);
    return new Floor(
        id,
        in.nameOr(id),
        storey,
        in.heightOr("offset", base, base),
        in.quantity("area", QuantityKind.AREA, Sign.ABOVE_ZERO),
        in.quantity("sill", QuantityKind.LENGTH, Sign.ZERO_OR_MORE),
        in.quantity("sillLength", QuantityKind.LENGTH, Sign.ABOVE_ZERO),
        in.optionalReference("spillsTo", Referent.FLOOR, Referent.VESSEL));
  }

  Vessel vessel(Fields in) {
    String id = in.id();
    Vessel.Role role = in.choice("role", Vessel.Role.class);
    Shape shape = in.object("shape", Form.SHAPE, ShapeReader::read, ShapeReader.STAND_IN);
    String standsIn = in.reference("standsIn", Referent.FLOOR, Referent.VESSEL);
    double base = in.context().elevations().bottomOf(standsIn);
    double bottom = in.heightOr("raised", base, base);
    return new Vessel(
        id,
        in.nameOr(id),
        role,
        shape,
        bottom,
        role == Vessel.Role.BASIN
            ? in.heightOr("level", bottom, bottom)
            : in.height("level", bottom),
        in.listOrNone("contents", Form.CONTENTS, PlaceReader::displacement),
        in.quantityOr("salinity", QuantityKind.SALINITY, Sign.ZERO_OR_MORE, salinity),
        in.quantityOr("spillEdge", QuantityKind.LENGTH, Sign.ABOVE_ZERO, shape.rimLength()),
        standsIn,
        in.optionalQuantity("emptyMass", QuantityKind.MASS, Sign.ABOVE_ZERO));
  }

  private static Vessel.Displacement displacement(Fields in) {
    return new Vessel.Displacement(
        in.quantity("from", QuantityKind.LENGTH, Sign.ZERO_OR_MORE),
        in.quantity("to", QuantityKind.LENGTH, Sign.ABOVE_ZERO),
        in.quantity("volume", QuantityKind.VOLUME, Sign.ABOVE_ZERO));
  }

  static Weir weir(Fields in) {
    String id = in.id();
    String from = in.reference("from", Referent.VESSEL);
    return new Weir(
        id,
        in.nameOr(id),
        in.choice("kind", Weir.Kind.class),
        from,
        in.reference("to", Referent.VESSEL),
        in.height("crest", in.context().elevations().bottomOf(from)),
        in.quantity("length", QuantityKind.LENGTH, Sign.ABOVE_ZERO));
  }

  static Junction junction(Fields in) {
    String id = in.id();
    return new Junction(id, in.nameOr(id), in.height("elevation", 0));
  }

  static Supply supply(Fields in) {
    String id = in.id();
    OptionalDouble pressure =
        in.optionalQuantity("pressure", QuantityKind.PRESSURE, Sign.ABOVE_ZERO);
    OptionalDouble flow = in.optionalQuantity("maximumFlow", QuantityKind.FLOW, Sign.ABOVE_ZERO);
    if (pressure.isEmpty() && flow.isEmpty()) {
      in.reject(
          "pressure",
          "a supply without pressure and without maximumFlow",
          "give its pressure such as \"3 bar\", its maximumFlow such as \"4 L/min\", or both");
    }
    return new Supply(
        id,
        in.nameOr(id),
        in.choice("kind", Supply.Kind.class),
        in.height("elevation", 0),
        pressure,
        flow,
        in.quantityOr("salinity", QuantityKind.SALINITY, Sign.ZERO_OR_MORE, 0),
        in.choice("protection", Supply.Protection.class));
  }

  static Drain drain(Fields in) {
    String id = in.id();
    return new Drain(
        id,
        in.nameOr(id),
        in.height("elevation", 0),
        in.has("surchargeLevel")
            ? OptionalDouble.of(in.height("surchargeLevel", 0))
            : OptionalDouble.empty());
  }
}
