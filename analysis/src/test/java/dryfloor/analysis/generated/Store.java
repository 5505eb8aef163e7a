package dryfloor.analysis.generated;

import static dryfloor.analysis.generated.Unit.dm2;

import dryfloor.model.element.Supply;
import java.util.Set;

/**
 * A reservoir filled from outside up to its float, that tops up a vessel below it.
 *
 * @param kind of the supply
 * @param area of the reservoir (dm²)
 * @param served plan area of what it tops up (dm²)
 * @param band of the reservoir's float valve (mm)
 */
public record Store(
    Supply.Kind kind, TopUp topUp, int area, int served, int band, Set<Trait> traits)
    implements Unit {

  /** How water gets from the reservoir to what it tops up. */
  public enum TopUp {
    GRAVITY_AND_FLOAT("through a float valve by gravity"),
    PUMP_AND_SWITCH("by a pump on a level switch"),
    DOSING_PUMP("by a dosing pump on a level switch"),
    DRIP("through a restrictor that drips for weeks"),
    POWERED_VALVE("through a powered valve on a level switch");

    private final String words;

    TopUp(String words) {
      this.words = words;
    }
  }

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.TIMER,
          Trait.HAND_SWITCH,
          Trait.HIGH_CUTOFF,
          Trait.CHECK_VALVE,
          Trait.BACKED_UP,
          Trait.STAYS_OFF,
          Trait.EMERGENCY_DRAIN,
          Trait.LIGHT,
          Trait.LEVEL_AT_LIP);

  double reservoirArea() {
    return dm2(area);
  }

  @Override
  public String sentence() {
    return String.format(
        "a reservoir of %d dm2 filled from a %s over a float of %d mm, that tops up %d dm2 %s%s",
        area, kind, band, served, topUp.words, Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    new StoreDrawing(this, site, prefix).draw();
  }
}
