package dryfloor.analysis.generated;

import java.util.Set;

/**
 * A display upstairs that drains into a sump from which a pump sends the water back.
 *
 * @param displayArea dm²
 * @param displayHeight mm
 * @param sumpArea dm²
 * @param sumpHeight mm
 * @param flow of the pump at no head (mL/s)
 * @param bore of the return (mm)
 */
public record Circle(
    Outline display,
    int displayArea,
    int displayHeight,
    int sumpArea,
    int sumpHeight,
    Return outlet,
    int flow,
    int bore,
    Set<Trait> traits)
    implements Unit {

  /** How the return ends, and what keeps it from drawing the display down. */
  public enum Return {
    OVER_THE_RIM("over the rim"),
    UNDER_WATER("deep under water, with nothing to break a siphon"),
    WITH_A_BREAK("under water, with a siphon break"),
    WITH_A_TINY_BREAK("under water, with a siphon break of 1 mm"),
    WITH_A_BREAK_AT_THE_LIP("under water, with a siphon break exactly at the lip"),
    WITH_A_BREAK_IN_THE_AIR("under water, with a siphon break above the rim"),
    AT_THE_LIP("exactly at the height of the lip");

    private final String words;

    Return(String words) {
      this.words = words;
    }
  }

  static final Set<Trait> POSSIBLE =
      Set.of(
          Trait.TRAY,
          Trait.TRAY_DRAIN,
          Trait.ROCKS,
          Trait.STEEP,
          Trait.JOINTS,
          Trait.STRAINER,
          Trait.HAND_VALVE,
          Trait.POWERED_VALVE,
          Trait.CHECK_VALVE,
          Trait.VENTED,
          Trait.THROTTLED_DRAIN,
          Trait.EMERGENCY_DRAIN,
          Trait.CHAMBER,
          Trait.TINY_CHAMBER,
          Trait.OVERFLOW_BOX,
          Trait.PARALLEL_PUMPS,
          Trait.LEVEL_AT_LIP,
          Trait.LOSES_PRIME,
          Trait.STAYS_OFF,
          Trait.RESTARTS_LATE,
          Trait.BACKED_UP,
          Trait.HIGH_CUTOFF,
          Trait.LOW_CUTOFF,
          Trait.LEAK_SENSOR);

  Circle with(Set<Trait> more) {
    return new Circle(
        display, displayArea, displayHeight, sumpArea, sumpHeight, outlet, flow, bore, more);
  }

  @Override
  public String sentence() {
    return String.format(
        "a display (%s of %d dm2 and %d mm) over a sump of %d dm2 and %d mm, fed by a pump of"
            + " %d mL/s through %d mm that ends %s%s",
        display,
        displayArea,
        displayHeight,
        sumpArea,
        sumpHeight,
        flow,
        bore,
        outlet.words,
        Trait.words(traits));
  }

  @Override
  public void draw(Site site, String prefix) {
    new CircleDrawing(this, site, prefix).draw();
  }
}
