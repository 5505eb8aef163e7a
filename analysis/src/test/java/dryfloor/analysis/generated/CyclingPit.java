package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.analysis.installation.RunPlan;
import dryfloor.model.element.Control;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A pit into which water runs all the time and that a pump on a level switch empties again and
 * again.
 *
 * @param inflow mL/s
 * @param area dm²
 * @param band between the switching levels (mm)
 * @param pump at no head (mL/s)
 */
public record CyclingPit(int inflow, int area, int band, int pump, Set<Trait> traits)
    implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.CHECK_VALVE,
          Trait.LOSES_PRIME,
          Trait.STAYS_OFF,
          Trait.RESTARTS_LATE,
          Trait.BACKED_UP,
          Trait.TIMER,
          Trait.HAND_SWITCH,
          Trait.LEAK_SENSOR,
          Trait.SURCHARGED_DRAIN,
          Trait.POWERED_VALVE);

  private static final double LOW = 0.08;
  private static final double HEIGHT = 0.6;

  @Override
  public String sentence() {
    return String.format(
        "a pit of %d dm2 into which %d mL/s run, emptied by %d mm at a time by a pump of %d mL/s%s",
        area, inflow, band, pump, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    String id = prefix + "pit";
    String under = site.under(Site.PLANT_ROOM, prefix, dm2(area), traits);
    String source = prefix + "source";
    site.plan
        .vessel(
            id,
            Outline.BOX.of(dm2(area), HEIGHT),
            v -> v.in(under).raised(0.02).level(LOW + 0.01).role(Vessel.Role.HEADER).fresh())
        .supply(
            new Supply(
                source,
                source,
                Supply.Kind.WELL,
                1.5,
                OptionalDouble.empty(),
                OptionalDouble.of(inflow * 1e-6),
                0,
                Supply.Protection.NONE))
        .run(prefix + "inflow", r -> inflow(site, prefix, id, r.fromSupply(source)));
    drawLift(site, prefix, id);
    drawControls(site, prefix, id);
  }

  private void inflow(Site site, String prefix, String id, RunPlan run) {
    Route.of(0.3, 1.5, site.plan.bottomOf(id) + HEIGHT + 0.05)
        .lay(run.to(Parts.freeEnd(site, id, HEIGHT + 0.05)).bore(0.02).standsIn(Site.PLANT_ROOM));
    if (traits.contains(Trait.POWERED_VALVE)) {
      run.parts(
          Parts.poweredValve(
              prefix + "inlet-valve", 0.1, site.power(traits), Part.Valve.Rest.OPEN));
    }
  }

  private void drawLift(Site site, String prefix, String id) {
    double suction = site.plan.bottomOf(id) + 0.03;
    RunEnd.AtDrain end = new RunEnd.AtDrain(site.sewer(traits));
    site.plan.run(
        prefix + "lift",
        r -> {
          Route.of(0.3, suction, 1.2, -0.4)
              .lay(r.from(Parts.port(site, id, 0.03)).to(end).standsIn(Site.PLANT_ROOM))
              .parts(
                  Parts.pump(
                      prefix + "lift-pump", 0.1, site.power(traits), 4, pump * 1e-6, traits));
          if (traits.contains(Trait.CHECK_VALVE)) {
            r.parts(Parts.checkValve(prefix + "check", 0.2));
          }
        });
  }

  private void drawControls(Site site, String prefix, String id) {
    List<String> pumps = List.of(prefix + "lift-pump");
    site.plan.levelSwitch(
        prefix + "float",
        id,
        LOW,
        LOW + mm(band),
        Control.LevelSwitch.Action.EMPTIES,
        prefix + "lift-pump");
    if (traits.contains(Trait.TIMER)) {
      site.plan.control(new Control.Timer(prefix + "timer", prefix + "timer", 3600, pumps));
    }
    if (traits.contains(Trait.HAND_SWITCH)) {
      site.plan.control(new Control.HandSwitch(prefix + "switch", prefix + "switch", false, pumps));
    }
    if (traits.contains(Trait.LEAK_SENSOR)) {
      site.plan.control(
          new Control.LeakSensor(
              prefix + "sensor", prefix + "sensor", Site.PLANT_ROOM, 0.003, 60, pumps));
    }
  }
}
