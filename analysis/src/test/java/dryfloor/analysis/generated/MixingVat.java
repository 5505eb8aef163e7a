package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;

import dryfloor.model.element.Control;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Set;

/**
 * A vat that people fill, empty and pump over by hand; all is shut in normal operation.
 *
 * @param area dm²
 * @param filled share of its height (%)
 */
public record MixingVat(Outline outline, int area, int filled, Set<Trait> traits) implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.CHECK_VALVE,
          Trait.BACKED_UP,
          Trait.SURCHARGED_DRAIN,
          Trait.LOSES_PRIME);

  private static final double HEIGHT = 0.8;

  @Override
  public String sentence() {
    return String.format(
        "a mixing vat, a %s of %d dm2, %d %% full, with fill and drain valves and a pump to another"
            + " vessel%s",
        outline, area, filled, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    String vat = prefix + "vat";
    String other = prefix + "other";
    String under = site.under(Site.PLANT_ROOM, prefix, 1.3 * dm2(area), traits);
    site.plan
        .vessel(
            vat,
            outline.of(dm2(area), HEIGHT),
            v -> v.in(under).raised(0.1).level(HEIGHT * filled / 100).role(Vessel.Role.MIXING_VAT))
        .vessel(
            other,
            Outline.CYLINDER.of(0.3, 0.5),
            v -> v.in(Site.PLANT_ROOM).raised(0.8).level(0.2).role(Vessel.Role.QUARANTINE));
    drawFillAndDrain(site, prefix, vat);
    drawTransfer(site, prefix, vat, other);
  }

  private void drawFillAndDrain(Site site, String prefix, String vat) {
    double top = site.plan.bottomOf(vat) + HEIGHT + 0.1;
    double low = site.plan.bottomOf(vat) + 0.02;
    String sewer = site.sewer(traits);
    site.plan
        .mains(prefix + "mains", 1, 250_000)
        .run(
            prefix + "fill",
            r ->
                Route.of(0.3, 1.0, top)
                    .lay(r.fromSupply(prefix + "mains").to(Parts.freeEnd(site, vat, HEIGHT + 0.1)))
                    .bore(0.015)
                    .standsIn(Site.PLANT_ROOM)
                    .parts(Parts.handValve(prefix + "fill-valve", 0.1, 0, Part.Valve.Use.FILL)))
        .run(
            prefix + "empty",
            r ->
                Route.of(0.3, low, -0.4)
                    .lay(r.from(Parts.port(site, vat, 0.02)).toDrain(sewer))
                    .standsIn(Site.PLANT_ROOM)
                    .parts(Parts.handValve(prefix + "empty-valve", 0.1, 0, Part.Valve.Use.EMPTY)));
  }

  private void drawTransfer(Site site, String prefix, String vat, String other) {
    double suction = site.plan.bottomOf(vat) + 0.05;
    double end = site.plan.bottomOf(other) + 0.55;
    site.plan
        .run(
            prefix + "transfer",
            r -> {
              Route.of(0.3, suction, end)
                  .lay(r.from(Parts.port(site, vat, 0.05)).to(Parts.freeEnd(site, other, 0.55)))
                  .bore(0.02)
                  .standsIn(Site.PLANT_ROOM)
                  .parts(
                      Parts.pump(
                          prefix + "transfer-pump", 0.1, site.power(traits), 4, 4e-4, traits));
              if (traits.contains(Trait.CHECK_VALVE)) {
                r.parts(Parts.checkValve(prefix + "check", 0.2));
              }
            })
        .control(
            new Control.HandSwitch(
                prefix + "switch", prefix + "switch", false, List.of(prefix + "transfer-pump")));
  }
}
