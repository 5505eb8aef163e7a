package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;

import dryfloor.model.element.Control;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Set;

/**
 * A vessel whose water a pump sends through equipment and back.
 *
 * @param area dm²
 * @param holds water that the equipment keeps while it runs (mL)
 * @param flow of the pump at no head (mL/s)
 */
public record DeviceLoop(Part.Device.Kind kind, int area, int holds, int flow, Set<Trait> traits)
    implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.JOINTS,
          Trait.STRAINER,
          Trait.CHECK_VALVE,
          Trait.LOSES_PRIME,
          Trait.STAYS_OFF,
          Trait.RESTARTS_LATE,
          Trait.BACKED_UP,
          Trait.HAND_SWITCH,
          Trait.LIGHT);

  @Override
  public String sentence() {
    return String.format(
        "a %s that keeps %d mL while it runs, on a vessel of %d dm2, with a pump of %d mL/s%s",
        kind, holds, area, flow, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    String id = prefix + "vessel";
    String under = site.under(Site.PLANT_ROOM, prefix, 1.3 * dm2(area), traits);
    site.plan.vessel(
        id,
        Outline.FRUSTUM.of(dm2(area), 0.5),
        v -> {
          v.in(under).raised(0.02).level(0.3).role(Vessel.Role.SKIMMER_BODY);
          if (traits.contains(Trait.LIGHT)) {
            v.weighs(3);
          }
        });
    double suction = site.plan.bottomOf(id) + 0.1;
    Route way = Route.of(0.3, suction, suction + 0.6, suction + 0.25);
    site.plan.run(
        prefix + "loop",
        r -> {
          way.lay(r.from(Parts.port(site, id, 0.1)).to(Parts.freeEnd(site, id, 0.35)))
              .bore(0.025)
              .standsIn(Site.PLANT_ROOM);
          if (traits.contains(Trait.STRAINER)) {
            r.strainer(prefix + "strainer", 0.05, 2);
          }
          r.parts(Parts.pump(prefix + "pump", 0.1, site.power(traits), 2, flow * 1e-6, traits));
          if (traits.contains(Trait.JOINTS)) {
            Parts.joints(prefix, 0.15, suction, Site.PLANT_ROOM).forEach(r::parts);
          }
          if (traits.contains(Trait.CHECK_VALVE)) {
            r.parts(Parts.checkValve(prefix + "check", 0.2));
          }
          r.parts(Parts.device(prefix + "device", 0.6, kind, suction + 0.5, holds * 1e-6));
        });
    if (traits.contains(Trait.HAND_SWITCH)) {
      site.plan.control(
          new Control.HandSwitch(
              prefix + "switch", prefix + "switch", true, List.of(prefix + "pump")));
    }
  }
}
