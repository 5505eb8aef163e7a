package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.analysis.installation.RunPlan;
import dryfloor.model.element.Control;
import dryfloor.model.element.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Draws a {@link Circle}. Its heights hang on the lip of the drain, 70 mm below the rim. */
final class CircleDrawing {

  private static final double LIP_BELOW_RIM = 0.07;
  private static final double RAISED = 0.8;
  private static final double SUCTION = 0.05;

  private final Circle circle;
  private final Site site;
  private final String prefix;
  private final Set<Trait> traits;
  private final String display;
  private final String sump;
  private final String chamber;
  private final double rim;
  private final double lip;
  private final double sumpRim;
  private final List<String> pumps = new ArrayList<>();

  CircleDrawing(Circle circle, Site site, String prefix) {
    this.circle = circle;
    this.site = site;
    this.prefix = prefix;
    traits = circle.traits();
    display = prefix + "display";
    sump = prefix + "sump";
    chamber = hasChamber() ? prefix + "chamber" : sump;
    rim = mm(circle.displayHeight());
    lip = rim - LIP_BELOW_RIM;
    sumpRim = mm(circle.sumpHeight());
  }

  private boolean has(Trait trait) {
    return traits.contains(trait);
  }

  private boolean hasChamber() {
    return has(Trait.CHAMBER) || has(Trait.TINY_CHAMBER);
  }

  void draw() {
    drawSump();
    drawDisplay();
    drawDrains();
    drawReturn();
    drawControls();
  }

  private void drawSump() {
    double chamberArea = has(Trait.TINY_CHAMBER) ? 0.015 : 0.15;
    double footprint = dm2(circle.sumpArea()) + (hasChamber() ? chamberArea : 0);
    String under = site.under(Site.PLANT_ROOM, prefix, footprint, traits);
    double baffle = 0.55 * sumpRim;
    site.plan.vessel(
        sump,
        Outline.BOX.of(dm2(circle.sumpArea()), sumpRim),
        v -> v.in(under).raised(0.02).level(baffle + (hasChamber() ? 0.005 : 0)));
    if (hasChamber()) {
      site.plan
          .vessel(
              chamber,
              Outline.BOX.of(chamberArea, sumpRim),
              v -> v.in(under).raised(0.02).level(baffle - 0.02))
          .weir(prefix + "baffle", sump, chamber, baffle, has(Trait.TINY_CHAMBER) ? 0.1 : 0.4);
    }
  }

  private void drawDisplay() {
    Shape shape = circle.display().of(dm2(circle.displayArea()), rim);
    String hall = site.hall();
    site.plan.vessel(
        display,
        shape,
        v -> {
          v.in(hall).raised(RAISED).role(Vessel.Role.DISPLAY);
          v.level(lip + (has(Trait.LEVEL_AT_LIP) ? 0 : 0.005));
          if (has(Trait.ROCKS)) {
            v.contents(0, lip, 0.1 * shape.capacity());
          }
        });
    if (has(Trait.OVERFLOW_BOX)) {
      double deep = 0.25;
      site.plan
          .vessel(
              prefix + "box",
              Outline.BOX.of(0.02, deep),
              v -> v.in(hall).raised(RAISED + rim - deep).level(0.1).role(Vessel.Role.OVERFLOW_BOX))
          .weir(
              new Weir(
                  prefix + "teeth",
                  prefix + "teeth",
                  Weir.Kind.TEETH,
                  display,
                  prefix + "box",
                  site.plan.bottomOf(display) + lip,
                  0.25));
    }
  }

  private void drawDrains() {
    boolean boxed = has(Trait.OVERFLOW_BOX);
    drawDrain("drain", boxed ? prefix + "box" : display, boxed ? 0.08 : lip, Run.Duty.DRAIN);
    if (has(Trait.EMERGENCY_DRAIN)) {
      drawDrain("emergency", display, lip + 0.03, Run.Duty.EMERGENCY);
    }
  }

  private void drawDrain(String name, String from, double at, Run.Duty duty) {
    boolean main = duty == Run.Duty.DRAIN;
    double mouth = sumpRim - 0.02;
    double top = site.plan.bottomOf(from) + at;
    double end = site.plan.bottomOf(sump) + mouth;
    Route way = Route.of(0.5, top, end);
    site.plan.run(
        prefix + name,
        r -> {
          way.lay(r.from(Parts.lip(site, from, at)).to(Parts.freeEnd(site, sump, mouth)))
              .bore(0.06)
              .duty(duty)
              .standsIn(Site.PLANT_ROOM);
          if (main && has(Trait.VENTED)) {
            r.vented();
          }
          if (main && has(Trait.THROTTLED_DRAIN)) {
            r.parts(Parts.handValve(prefix + "throttle", 1, 0.5, Part.Valve.Use.TRIM));
          }
        });
  }

  private void drawReturn() {
    double outletAt = outletAt();
    double suction = site.plan.bottomOf(chamber) + SUCTION;
    double crest = site.plan.bottomOf(display) + rim + 0.1;
    double end = site.plan.bottomOf(display) + outletAt;
    boolean parallel = has(Trait.PARALLEL_PUMPS);
    double start = parallel ? suction + 0.3 : suction;
    Route way = Route.of(0.3, start, crest, end);
    if (parallel) {
      site.plan.junction(prefix + "manifold", start);
      drawPumpTo(prefix + "manifold", 1, suction, start);
      drawPumpTo(prefix + "manifold", 2, suction, start);
    }
    site.plan.run(
        prefix + "return",
        r -> {
          way.lay(r.to(Parts.freeEnd(site, display, outletAt)))
              .bore(mm(circle.bore()))
              .standsIn(Site.PLANT_ROOM);
          if (parallel) {
            r.fromJunction(prefix + "manifold");
          } else {
            r.from(Parts.port(site, chamber, SUCTION)).parts(pump(1, 0.1));
          }
          fitOut(r, way, start);
        });
  }

  private double outletAt() {
    return switch (circle.outlet()) {
      case OVER_THE_RIM -> rim + 0.03;
      case UNDER_WATER,
          WITH_A_BREAK,
          WITH_A_TINY_BREAK,
          WITH_A_BREAK_AT_THE_LIP,
          WITH_A_BREAK_IN_THE_AIR ->
          0.6 * lip;
      case AT_THE_LIP -> lip;
    };
  }

  private void drawPumpTo(String manifold, int number, double suction, double up) {
    Route way = Route.of(0.3, suction, up);
    site.plan.run(
        prefix + "branch-" + number,
        r ->
            way.lay(r.from(Parts.port(site, chamber, SUCTION)).toJunction(manifold))
                .bore(mm(circle.bore()))
                .standsIn(Site.PLANT_ROOM)
                .parts(pump(number, 0.1), Parts.checkValve(prefix + "check-" + number, 0.4)));
  }

  private Part.Pump pump(int number, double along) {
    String id = prefix + "pump-" + number;
    pumps.add(id);
    double head = 6.5 + rim;
    return Parts.pump(id, along, site.power(traits), head, circle.flow() * 1e-6, traits);
  }

  private void fitOut(RunPlan r, Route way, double start) {
    if (has(Trait.JOINTS)) {
      Parts.joints(prefix, 0.15, start, Site.PLANT_ROOM).forEach(r::parts);
    }
    if (has(Trait.STRAINER)) {
      r.strainer(prefix + "strainer", 0.2, 3);
    }
    if (has(Trait.CHECK_VALVE)) {
      r.parts(Parts.checkValve(prefix + "check", 0.22));
    }
    if (has(Trait.HAND_VALVE)) {
      r.parts(Parts.handValve(prefix + "valve", 0.24, 0.6, Part.Valve.Use.ISOLATE));
    }
    if (has(Trait.POWERED_VALVE)) {
      r.parts(
          Parts.poweredValve(
              prefix + "powered-valve", 0.26, site.power(traits), Part.Valve.Rest.CLOSED));
    }
    if (has(Trait.STEEP)) {
      for (Fitting fitting : Fitting.values()) {
        r.fitting(fitting, 1);
      }
      r.roughness(1e-4).extraLoss(1);
    }
    siphonBreak(r, way.along(1) + 0.05);
  }

  private void siphonBreak(RunPlan r, double along) {
    double bore = mm(circle.bore());
    switch (circle.outlet()) {
      case OVER_THE_RIM, UNDER_WATER, AT_THE_LIP -> {}
      case WITH_A_BREAK -> r.siphonBreak(prefix + "break", along, display, lip - 0.015, bore / 4);
      case WITH_A_TINY_BREAK -> r.siphonBreak(prefix + "break", along, display, lip - 0.015, 0.001);
      case WITH_A_BREAK_AT_THE_LIP ->
          r.siphonBreak(prefix + "break", along, display, lip, bore / 4);
      case WITH_A_BREAK_IN_THE_AIR ->
          r.parts(
              new Part.SiphonBreak(
                  prefix + "break",
                  prefix + "break",
                  along,
                  site.plan.bottomOf(display) + rim + 0.05,
                  bore / 4,
                  2,
                  Optional.empty()));
    }
  }

  private void drawControls() {
    String[] all = pumps.toArray(String[]::new);
    if (has(Trait.HIGH_CUTOFF)) {
      site.plan.levelSwitch(
          prefix + "high",
          display,
          lip + 0.035,
          lip + 0.05,
          has(Trait.LEAK_SENSOR)
              ? Control.LevelSwitch.Action.LOCKS_OUT_WHEN_HIGH
              : Control.LevelSwitch.Action.STOPS_WHEN_HIGH,
          all);
    }
    if (has(Trait.LOW_CUTOFF)) {
      site.plan.levelSwitch(
          prefix + "low",
          chamber,
          SUCTION + 0.01,
          SUCTION + 0.03,
          has(Trait.HIGH_CUTOFF)
              ? Control.LevelSwitch.Action.LOCKS_OUT_WHEN_LOW
              : Control.LevelSwitch.Action.STOPS_WHEN_LOW,
          all);
    }
    if (has(Trait.LEAK_SENSOR)) {
      site.plan.control(
          new Control.LeakSensor(
              prefix + "sensor", prefix + "sensor", Site.PLANT_ROOM, 0.002, 5, pumps));
    }
  }
}
