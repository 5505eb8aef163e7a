package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.analysis.installation.RunPlan;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Draws a {@link Store}. */
final class StoreDrawing {

  private static final double HEIGHT = 0.5;
  private static final double CLOSES = 0.4;
  private static final double SERVED_LEVEL = 0.3;

  private final Store store;
  private final Site site;
  private final String prefix;
  private final Set<Trait> traits;
  private final String reservoir;
  private final String served;

  StoreDrawing(Store store, Site site, String prefix) {
    this.store = store;
    this.site = site;
    this.prefix = prefix;
    traits = store.traits();
    reservoir = prefix + "reservoir";
    served = prefix + "served";
  }

  private boolean has(Trait trait) {
    return traits.contains(trait);
  }

  void draw() {
    drawVessels();
    drawFill();
    drawTopUp();
    boolean drips = store.topUp() == Store.TopUp.DRIP;
    if (has(Trait.EMERGENCY_DRAIN) || drips) {
      String sewer = site.sewer();
      Route way = Route.of(0.3, site.plan.bottomOf(served) + 0.4, -0.4);
      site.plan.run(
          prefix + "overflow",
          r ->
              way.lay(r.fromLip(served, 0.4).toDrain(sewer))
                  .bore(0.032)
                  .duty(drips ? Run.Duty.DRAIN : Run.Duty.EMERGENCY)
                  .standsIn(Site.PLANT_ROOM));
    }
  }

  private void drawVessels() {
    String under = site.under(Site.PLANT_ROOM, prefix, dm2(store.served()), traits);
    site.plan
        .vessel(
            served,
            Outline.BOX.of(dm2(store.served()), HEIGHT),
            v -> v.in(under).raised(0.02).level(SERVED_LEVEL).role(Vessel.Role.SUMP))
        .vessel(
            reservoir,
            Outline.BOX.of(store.reservoirArea(), HEIGHT),
            v -> {
              v.in(Site.PLANT_ROOM).raised(1).role(Vessel.Role.RESERVOIR).fresh();
              v.level(has(Trait.LEVEL_AT_LIP) ? CLOSES : CLOSES - 0.02);
              if (has(Trait.LIGHT)) {
                v.weighs(2);
              }
            });
  }

  private void drawFill() {
    String supply = prefix + "supply";
    boolean purifier = store.kind() == Supply.Kind.PURIFIER;
    double top = site.plan.bottomOf(reservoir) + HEIGHT + 0.1;
    site.plan
        .supply(
            new Supply(
                supply,
                supply,
                store.kind(),
                1.2,
                OptionalDouble.of(purifier ? 100_000 : 300_000),
                purifier ? OptionalDouble.of(5e-6) : OptionalDouble.empty(),
                0.1,
                Supply.Protection.BACKFLOW_PREVENTER))
        .run(
            prefix + "fill",
            r -> {
              Route.of(0.4, 1.2, top)
                  .lay(r.fromSupply(supply).to(Parts.freeEnd(site, reservoir, HEIGHT + 0.1)))
                  .bore(0.01)
                  .standsIn(Site.PLANT_ROOM)
                  .floatValve(prefix + "float", 0.3, 0.3, reservoir, CLOSES, mm(store.band()));
              if (purifier) {
                r.parts(Parts.device(prefix + "purifier", 0.4, Part.Device.Kind.PURIFIER, 1.4, 0));
              }
            });
  }

  private void drawTopUp() {
    double start = site.plan.bottomOf(reservoir) + 0.05;
    double end = site.plan.bottomOf(served) + HEIGHT + 0.05;
    site.plan.run(
        prefix + "top-up",
        r -> {
          r.from(Parts.port(site, reservoir, 0.05))
              .to(Parts.freeEnd(site, served, HEIGHT + 0.05))
              .bore(0.012)
              .standsIn(Site.PLANT_ROOM);
          boolean pumped =
              store.topUp() == Store.TopUp.PUMP_AND_SWITCH
                  || store.topUp() == Store.TopUp.DOSING_PUMP;
          Route way = pumped ? Route.of(0.3, start, start + 0.7, end) : Route.of(0.3, start, end);
          fitOut(way.lay(r));
          if (has(Trait.CHECK_VALVE)) {
            r.parts(Parts.checkValve(prefix + "check", 0.25));
          }
        });
  }

  private void fitOut(RunPlan r) {
    String driven = prefix + "top-up-drive";
    switch (store.topUp()) {
      case GRAVITY_AND_FLOAT ->
          r.floatValve(prefix + "low-float", 0.2, 0.4, served, SERVED_LEVEL, 0.02);
      case PUMP_AND_SWITCH -> {
        r.parts(Parts.pump(driven, 0.1, site.power(traits), 2, 5e-5, traits));
        control(driven);
      }
      case DOSING_PUMP -> {
        r.parts(Parts.dosingPump(driven, 0.1, site.power(traits), 1e-6));
        control(driven);
      }
      case DRIP -> r.parts(new Part.Restrictor(prefix + "drip", prefix + "drip", 0.2, 2e-4));
      case POWERED_VALVE -> {
        r.parts(Parts.poweredValve(driven, 0.1, site.power(traits), Part.Valve.Rest.AS_IT_IS));
        control(driven);
      }
    }
  }

  private void control(String driven) {
    site.plan.levelSwitch(
        prefix + "switch",
        served,
        SERVED_LEVEL - 0.03,
        SERVED_LEVEL,
        Control.LevelSwitch.Action.FILLS,
        driven);
    if (has(Trait.TIMER)) {
      site.plan.control(
          new Control.Timer(prefix + "timer", prefix + "timer", 1800, List.of(driven)));
    }
    if (has(Trait.HAND_SWITCH)) {
      site.plan.control(
          new Control.HandSwitch(prefix + "hand", prefix + "hand", false, List.of(driven)));
    }
    if (has(Trait.HIGH_CUTOFF)) {
      site.plan.levelSwitch(
          prefix + "high",
          served,
          SERVED_LEVEL + 0.05,
          SERVED_LEVEL + 0.08,
          Control.LevelSwitch.Action.STOPS_WHEN_HIGH,
          driven);
    }
  }
}
