package dryfloor.model.file;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import dryfloor.model.unit.QuantityKind;
import java.util.HashSet;
import java.util.Set;

/**
 * Writes runs and what sits in them.
 *
 * @param floors ids of the floors, to tell openings in floors from those in vessels
 */
record RunWriter(Bases bases, Set<String> floors, Spelling spelling) {

  RunWriter {
    floors = Set.copyOf(new HashSet<>(floors));
  }

  Sheet run(Run run) {
    Sheet sheet =
        new Sheet(spelling)
            .put("id", run.id())
            .put("name", run.name())
            .put("from", end(run.from()))
            .put("to", end(run.to()))
            .word("duty", run.duty())
            .length("bore", run.bore())
            .length("length", run.length())
            .length("roughness", run.roughness());
    if (!run.fittings().isEmpty()) {
      sheet.put("fittings", fittings(run));
    }
    sheet
        .number("extraLoss", run.extraLoss())
        .putIfAny("waypoints", run.waypoints().stream().map(this::waypoint).toList())
        .putIfAny("parts", run.parts().stream().map(this::part).toList());
    if (run.vented()) {
      sheet.put("vented", true);
    }
    return sheet.put("standsIn", run.standsIn());
  }

  private Sheet end(RunEnd end) {
    Sheet sheet = new Sheet(spelling);
    return switch (end) {
      case RunEnd.Opening opening ->
          sheet
              .put(floors.contains(opening.at()) ? "floor" : "vessel", opening.at())
              .height("at", opening.elevation() - bases.of(opening.at()))
              .word("opening", opening.kind());
      case RunEnd.AtJunction junction -> sheet.put("junction", junction.at());
      case RunEnd.AtSupply supply -> sheet.put("supply", supply.at());
      case RunEnd.AtDrain drain -> sheet.put("drain", drain.at());
    };
  }

  private Sheet fittings(Run run) {
    Sheet sheet = new Sheet(spelling);
    for (Run.FittingCount count : run.fittings()) {
      String word = Words.of(count.kind());
      Object before = sheet.fields().getOrDefault(word, 0);
      sheet.put(word, (Integer) before + count.count());
    }
    return sheet;
  }

  private Sheet waypoint(Run.Waypoint point) {
    return new Sheet(spelling)
        .height("elevation", point.elevation())
        .height("along", point.along());
  }

  private Sheet sheet(Form form, Part part) {
    return new Sheet(spelling)
        .put("part", form.word())
        .put("id", part.id())
        .put("name", part.name())
        .height("along", part.along());
  }

  private Sheet part(Part part) {
    return switch (part) {
      case Part.Pump pump -> pump(pump);
      case Part.Valve valve -> valve(valve);
      case Part.FloatValve valve ->
          kv(sheet(Form.FLOAT_VALVE, valve), valve.kv())
              .put("vessel", valve.vessel())
              .height("closesAt", valve.closesAt() - bases.of(valve.vessel()))
              .length("band", valve.band());
      case Part.CheckValve valve ->
          sheet(Form.CHECK_VALVE, valve)
              .quantity("crackingHead", QuantityKind.HEAD, valve.crackingHead())
              .number("loss", valve.loss());
      case Part.SiphonBreak hole ->
          sheet(Form.SIPHON_BREAK, hole)
              .height("at", hole.elevation() - hole.coveredBy().map(bases::of).orElse(0.0))
              .length("diameter", hole.diameter())
              .put("count", hole.count())
              .put("coveredBy", hole.coveredBy());
      case Part.Joint joint ->
          sheet(Form.JOINT, joint)
              .word("kind", joint.kind())
              .height("elevation", joint.elevation())
              .put("standsIn", joint.standsIn());
      case Part.Strainer strainer -> sheet(Form.STRAINER, strainer).number("loss", strainer.loss());
      case Part.Restrictor restrictor -> kv(sheet(Form.RESTRICTOR, restrictor), restrictor.kv());
      case Part.Device device ->
          sheet(Form.DEVICE, device)
              .word("kind", device.kind())
              .height("elevation", device.elevation())
              .number("loss", device.loss())
              .quantity("holds", QuantityKind.VOLUME, device.holds())
              .quantity("cupOverflow", QuantityKind.FLOW, device.cupOverflow())
              .put("standsIn", device.standsIn());
    };
  }

  private Sheet pump(Part.Pump pump) {
    Sheet sheet = sheet(Form.PUMP, pump);
    return sheet
        .put(
            "curve",
            pump.curve().stream()
                .map(
                    point ->
                        sheet.pair(
                            QuantityKind.FLOW, point.flow(), QuantityKind.HEAD, point.head()))
                .toList())
        .quantity("speed", QuantityKind.FRACTION, pump.speed())
        .word("kind", pump.kind())
        .put("power", power(pump.power()))
        .number("stoppedLoss", pump.stoppedLoss())
        .put("primesAgain", pump.primesAgain())
        .put("standsIn", pump.standsIn());
  }

  Sheet power(Power power) {
    return new Sheet(spelling)
        .put("circuit", power.circuit())
        .word("onReturn", power.onReturn())
        .quantity("delay", QuantityKind.TIME, power.delay());
  }

  private Sheet valve(Part.Valve valve) {
    Sheet sheet =
        kv(sheet(Form.VALVE, valve), valve.kv())
            .quantity("opening", QuantityKind.FRACTION, valve.opening());
    return switch (valve.drive()) {
      case Part.Valve.Drive.Hand hand -> sheet.word("hand", hand.use());
      case Part.Valve.Drive.Powered powered ->
          sheet.put("powered", power(powered.power()).word("rest", powered.rest()));
    };
  }

  private static Sheet kv(Sheet sheet, double kv) {
    return sheet.quantity("kv", QuantityKind.VALVE_COEFFICIENT, kv);
  }
}
