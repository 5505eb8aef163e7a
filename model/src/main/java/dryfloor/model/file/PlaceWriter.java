package dryfloor.model.file;

import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.shape.Shape;
import dryfloor.model.unit.QuantityKind;

/** Writes what holds water or stands for the outside. */
record PlaceWriter(Installation installation, Bases bases, Spelling spelling) {

  private Sheet sheet(String id, String name) {
    return new Sheet(spelling).put("id", id).put("name", name);
  }

  Sheet storey(Storey storey) {
    return sheet(storey.id(), storey.name())
        .height("elevation", storey.elevation())
        .length("height", storey.height());
  }

  Sheet floor(Floor floor) {
    Sheet sheet = sheet(floor.id(), floor.name()).put("storey", floor.storey());
    double offset = floor.elevation() - bases.of(floor.storey());
    if (offset != 0 || installation.isUncertain(floor.id(), "offset")) {
      sheet.height("offset", offset);
    }
    return sheet
        .quantity("area", QuantityKind.AREA, floor.area())
        .length("sill", floor.sill())
        .length("sillLength", floor.sillLength())
        .put("spillsTo", floor.spillsTo());
  }

  Sheet vessel(Vessel vessel, double usualSalinity) {
    Sheet sheet =
        sheet(vessel.id(), vessel.name())
            .word("role", vessel.role())
            .put("shape", shape(vessel.shape()))
            .put("standsIn", vessel.standsIn())
            .height("raised", vessel.bottom() - bases.of(vessel.standsIn()))
            .height("level", vessel.level() - vessel.bottom())
            .putIfAny("contents", vessel.contents().stream().map(this::contents).toList());
    if (vessel.salinity() != usualSalinity || installation.isUncertain(vessel.id(), "salinity")) {
      sheet.quantity("salinity", QuantityKind.SALINITY, vessel.salinity());
    }
    if (vessel.spillEdge() != vessel.shape().rimLength()
        || installation.isUncertain(vessel.id(), "spillEdge")) {
      sheet.length("spillEdge", vessel.spillEdge());
    }
    return sheet.quantity("emptyMass", QuantityKind.MASS, vessel.emptyMass());
  }

  private Sheet contents(Vessel.Displacement solid) {
    return new Sheet(spelling)
        .length("from", solid.from())
        .length("to", solid.to())
        .quantity("volume", QuantityKind.VOLUME, solid.volume());
  }

  private Sheet shape(Shape shape) {
    Sheet body = new Sheet(spelling);
    String kind =
        switch (shape) {
          case Shape.Box box -> {
            body.length("length", box.length()).length("width", box.width());
            yield "box";
          }
          case Shape.Cylinder cylinder -> {
            body.length("diameter", cylinder.diameter());
            yield "cylinder";
          }
          case Shape.Frustum frustum -> {
            body.length("bottomDiameter", frustum.bottomDiameter());
            body.length("rimDiameter", frustum.rimDiameter());
            yield "frustum";
          }
          case Shape.Prism prism -> {
            body.quantity("area", QuantityKind.AREA, prism.planArea());
            body.length("rimLength", prism.rimLength());
            yield "outline";
          }
          case Shape.Measured measured -> {
            body.put("points", measured.points().stream().map(this::point).toList());
            body.length("rimLength", measured.rimLength());
            yield "table";
          }
        };
    if (!kind.equals("table")) {
      body.length("height", shape.height());
    }
    return new Sheet(spelling).put(kind, body);
  }

  private Object point(Shape.Measured.Point point) {
    return new Sheet(spelling)
        .pair(QuantityKind.LENGTH, point.depth(), QuantityKind.VOLUME, point.volume());
  }

  Sheet weir(Weir weir) {
    return sheet(weir.id(), weir.name())
        .word("kind", weir.kind())
        .put("from", weir.from())
        .put("to", weir.to())
        .height("crest", weir.crest() - bases.of(weir.from()))
        .length("length", weir.length());
  }

  Sheet junction(Junction junction) {
    return sheet(junction.id(), junction.name()).height("elevation", junction.elevation());
  }

  Sheet supply(Supply supply) {
    return sheet(supply.id(), supply.name())
        .word("kind", supply.kind())
        .height("elevation", supply.elevation())
        .quantity("pressure", QuantityKind.PRESSURE, supply.pressure())
        .quantity("maximumFlow", QuantityKind.FLOW, supply.maximumFlow())
        .quantity("salinity", QuantityKind.SALINITY, supply.salinity())
        .word("protection", supply.protection());
  }

  Sheet drain(Drain drain) {
    return sheet(drain.id(), drain.name())
        .height("elevation", drain.elevation())
        .quantity("surchargeLevel", QuantityKind.LENGTH, drain.surchargeLevel());
  }
}
