package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Set;

/**
 * Raceways beside each other, fed from one sump through a manifold and overflowing back into it.
 *
 * @param raceways how many
 * @param area of each (dm²)
 * @param flow of a pump at no head (mL/s)
 * @param step by which each raceway stands higher than the one before (mm)
 */
public record Rack(int raceways, int area, int flow, int step, Set<Trait> traits) implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.PARALLEL_PUMPS,
          Trait.CHECK_VALVE,
          Trait.LEVEL_AT_LIP,
          Trait.EQUAL_ELEVATIONS,
          Trait.ZERO_FLOW_BRANCH,
          Trait.LOSES_PRIME,
          Trait.BACKED_UP,
          Trait.SURCHARGED_DRAIN);

  private static final double LIP = 0.22;

  @Override
  public String sentence() {
    return String.format(
        "%d raceways of %d dm2, each %d mm above the last, on a manifold fed with %d mL/s%s",
        raceways, area, step, flow, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    double sumpArea = 0.5 + raceways * dm2(area) / 2;
    String under = site.under(Site.PLANT_ROOM, prefix, sumpArea, traits);
    site.plan
        .vessel(
            prefix + "sump",
            Outline.PRISM.of(sumpArea, 0.5),
            v -> v.in(under).raised(0.02).level(0.25))
        .junction(prefix + "manifold", site.plan.bottomOf(prefix + "sump") + 0.3);
    int pumps = traits.contains(Trait.PARALLEL_PUMPS) ? 2 : 1;
    for (int i = 1; i <= pumps; i++) {
      drawPump(site, prefix, i);
    }
    for (int i = 1; i <= raceways; i++) {
      drawRaceway(site, prefix, i);
    }
  }

  private void drawPump(Site site, String prefix, int number) {
    double suction = site.plan.bottomOf(prefix + "sump") + 0.05;
    site.plan.run(
        prefix + "lift-" + number,
        r -> {
          Route.of(0.3, suction, suction + 0.25)
              .lay(
                  r.from(Parts.port(site, prefix + "sump", 0.05))
                      .toJunction(prefix + "manifold")
                      .standsIn(Site.PLANT_ROOM))
              .parts(
                  Parts.pump(
                      prefix + "pump-" + number, 0.1, site.power(traits), 3, flow * 1e-6, traits));
          if (traits.contains(Trait.CHECK_VALVE) || traits.contains(Trait.PARALLEL_PUMPS)) {
            r.parts(Parts.checkValve(prefix + "check-" + number, 0.4));
          }
        });
  }

  private void drawRaceway(Site site, String prefix, int number) {
    String id = prefix + "raceway-" + number;
    double up = 0.8 + (traits.contains(Trait.EQUAL_ELEVATIONS) ? 0 : mm(step) * (number - 1));
    double level = LIP + (traits.contains(Trait.LEVEL_AT_LIP) ? 0 : 0.003);
    boolean shut = traits.contains(Trait.ZERO_FLOW_BRANCH) && number == raceways;
    site.plan
        .vessel(
            id,
            Outline.BOX.of(dm2(area), 0.3),
            v -> v.in(Site.PLANT_ROOM).raised(up).level(level).role(Vessel.Role.RACEWAY))
        .run(
            prefix + "feed-" + number,
            r ->
                Route.of(
                        0.3,
                        site.plan.bottomOf(prefix + "sump") + 0.3,
                        site.plan.bottomOf(id) + 0.28)
                    .lay(
                        r.fromJunction(prefix + "manifold")
                            .to(Parts.freeEnd(site, id, 0.28))
                            .bore(0.02)
                            .standsIn(Site.PLANT_ROOM))
                    .parts(
                        Parts.handValve(
                            prefix + "valve-" + number,
                            0.2,
                            shut ? 0 : 0.7,
                            shut ? Part.Valve.Use.ISOLATE : Part.Valve.Use.TRIM)))
        .run(
            prefix + "overflow-" + number,
            r ->
                Route.of(
                        0.3,
                        site.plan.bottomOf(id) + LIP,
                        site.plan.bottomOf(prefix + "sump") + 0.45)
                    .lay(
                        r.fromLip(id, LIP)
                            .to(Parts.freeEnd(site, prefix + "sump", 0.45))
                            .bore(0.05)
                            .standsIn(Site.PLANT_ROOM)));
  }
}
