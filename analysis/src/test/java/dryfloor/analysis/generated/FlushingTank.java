package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A well that trickles into a tank, whose drain lies over a crest: it primes, empties the tank,
 * takes air and waits, again and again.
 *
 * @param trickle mL/s
 * @param area dm²
 * @param crest height above the bottom (mm)
 * @param bore of the drain (mm)
 */
public record FlushingTank(int trickle, int area, int crest, int bore, Set<Trait> traits)
    implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(Trait.TRAY, Trait.TRAY_DRAIN, Trait.STRAINER, Trait.SURCHARGED_DRAIN);

  private static final double SUCTION = 0.02;

  @Override
  public String sentence() {
    return String.format(
        "a tank of %d dm2 into which %d mL/s trickle and that flushes over a crest of %d mm"
            + " through %d mm%s",
        area, trickle, crest, bore, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    String id = prefix + "flusher";
    String under = site.under(Site.PLANT_ROOM, prefix, dm2(area), traits);
    double height = mm(crest) + 0.2;
    String well = prefix + "well";
    site.plan
        .vessel(
            id,
            Outline.CYLINDER.of(dm2(area), height),
            v -> v.in(under).raised(0.02).level(mm(crest) / 2).fresh().role(Vessel.Role.QUARANTINE))
        .supply(
            new Supply(
                well,
                well,
                Supply.Kind.WELL,
                1.5,
                OptionalDouble.empty(),
                OptionalDouble.of(trickle * 1e-6),
                0,
                Supply.Protection.AIR_GAP))
        .run(
            prefix + "trickle",
            r ->
                Route.of(0.3, 1.5, site.plan.bottomOf(id) + height + 0.05)
                    .lay(
                        r.fromSupply(well)
                            .to(Parts.freeEnd(site, id, height + 0.05))
                            .bore(0.012)
                            .standsIn(Site.PLANT_ROOM)));
    drawSiphon(site, prefix, id);
  }

  private void drawSiphon(Site site, String prefix, String id) {
    double bottom = site.plan.bottomOf(id);
    RunEnd.AtDrain end = new RunEnd.AtDrain(site.sewer(traits));
    site.plan.run(
        prefix + "siphon",
        r -> {
          Route.of(0.2, bottom + SUCTION, bottom + mm(crest), -0.4)
              .lay(
                  r.from(Parts.freeEnd(site, id, SUCTION))
                      .to(end)
                      .bore(mm(bore))
                      .standsIn(Site.PLANT_ROOM));
          if (traits.contains(Trait.STRAINER)) {
            r.strainer(prefix + "strainer", 0, 2);
          }
        });
  }
}
