package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;
import static dryfloor.analysis.generated.Unit.mm;

import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Vessel;
import dryfloor.model.shape.Shape;
import java.util.Set;

/**
 * A vessel by itself.
 *
 * @param area dm²
 * @param height mm
 * @param filled share of its height (%)
 */
public record Tank(
    Vessel.Role role, Outline outline, int area, int height, int filled, Set<Trait> traits)
    implements Unit {

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.LIGHT,
          Trait.ROCKS,
          Trait.STIRRED,
          Trait.LEVEL_AT_RIM,
          Trait.BACKED_UP,
          Trait.SURCHARGED_DRAIN);

  @Override
  public String sentence() {
    return String.format(
        "a %s, a %s of %d dm2 and %d mm, %d %% full%s",
        role, outline, area, height, filled, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    Shape shape = outline.of(dm2(area), mm(height));
    String id = prefix + "tank";
    String under = site.under(Site.PLANT_ROOM, prefix, 1.3 * dm2(area), traits);
    double level = traits.contains(Trait.LEVEL_AT_RIM) ? mm(height) : mm(height) * filled / 100;
    site.plan.vessel(
        id,
        shape,
        v -> {
          v.in(under).raised(0.02).level(role == Vessel.Role.BASIN ? 0 : level).role(role);
          if (traits.contains(Trait.ROCKS)) {
            v.contents(0.01, 0.5 * mm(height), 0.2 * shape.capacity() / 2);
          }
          if (traits.contains(Trait.LIGHT)) {
            v.weighs(1);
          }
        });
    if (traits.contains(Trait.STIRRED)) {
      site.plan.circulationPump(
          new CirculationPump(
              prefix + "stream",
              prefix + "stream",
              id,
              site.plan.bottomOf(id) + 0.3 * mm(height),
              1e-3,
              site.power(traits)));
    }
    site.mayBeToppedUp(id, 0.005);
  }
}
