package dryfloor.model.file;

import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.unit.QuantityKind;
import java.util.List;
import java.util.Optional;

/** Reads the object at the root of the file. */
final class InstallationReader {

  /** Water temperature and salinity as the file gives them, before either is shared out. */
  private record Water(double celsius, double salinity) {}

  private static final Water UNKNOWN_WATER = new Water(Double.NaN, Double.NaN);

  private InstallationReader() {}

  static Installation read(Fields in) {
    Water water = in.object("water", Form.WATER, InstallationReader::water, UNKNOWN_WATER);
    PlaceReader places = new PlaceReader(water.salinity());
    return new Installation(
        in.text("name"),
        new Conditions(
            water.celsius(),
            in.quantityOr("away", QuantityKind.TIME, Sign.ABOVE_ZERO, Conditions.USUAL.away())),
        in.list("storeys", Form.STOREY, PlaceReader::storey),
        in.list("floors", Form.FLOOR, PlaceReader::floor),
        in.list("vessels", Form.VESSEL, places::vessel),
        in.listOrNone("weirs", Form.WEIR, PlaceReader::weir),
        in.listOrNone("junctions", Form.JUNCTION, PlaceReader::junction),
        in.listOrNone("supplies", Form.SUPPLY, PlaceReader::supply),
        in.listOrNone("drains", Form.DRAIN, PlaceReader::drain),
        in.listOrNone("runs", Form.RUN, RunReader::run),
        in.listOrNone("circulationPumps", Form.CIRCULATION_PUMP, ControlReader::circulationPump),
        in.listOrNone("circuits", Form.CIRCUIT, ControlReader::circuit),
        controls(in),
        in.has("failures")
            ? in.object(
                "failures", Form.FAILURES, InstallationReader::failures, FailureSettings.USUAL)
            : FailureSettings.USUAL);
  }

  private static Water water(Fields in) {
    return new Water(
        in.quantityOr(
            "temperature", QuantityKind.TEMPERATURE, Sign.ANY, Conditions.USUAL.celsius()),
        in.quantity("salinity", QuantityKind.SALINITY, Sign.ZERO_OR_MORE));
  }

  private static List<Control> controls(Fields in) {
    if (!in.has("controls")) {
      return List.of();
    }
    return in.items("controls").stream()
        .map(item -> in.variantItem(item, ControlReader::formOf, ControlReader::control))
        .flatMap(Optional::stream)
        .toList();
  }

  private static FailureSettings failures(Fields in) {
    return new FailureSettings(
        in.listOrNone(
            "skipped",
            Form.SKIPPED,
            skipped ->
                new FailureSettings.Skipped(skipped.text("failure"), skipped.text("reason"))),
        in.listOrNone(
            "topUps",
            Form.TOP_UP,
            topUp ->
                new FailureSettings.HandTopUp(
                    topUp.reference("vessel", Referent.VESSEL),
                    topUp.quantity("volume", QuantityKind.VOLUME, Sign.ABOVE_ZERO))),
        in.listOrNone("sequences", Form.SEQUENCE, SequenceReader::sequence),
        in.quantityOr(
            "dripArea", QuantityKind.AREA, Sign.ABOVE_ZERO, FailureSettings.USUAL.dripArea()),
        in.quantityOr("outage", QuantityKind.TIME, Sign.ABOVE_ZERO, FailureSettings.USUAL.outage()),
        in.quantityOr(
            "surge", QuantityKind.NUMBER, Sign.ABOVE_ZERO, FailureSettings.USUAL.surge()));
  }
}
