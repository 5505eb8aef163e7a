package dryfloor.app.report;

import dryfloor.analysis.practice.Warning;

/** What a rule has against a drawing, and what would be right, in a sentence or two. */
final class WarningSentence {

  private static final double KILO = 1000;

  private final Wording wording;

  WarningSentence(Wording wording) {
    this.wording = wording;
  }

  String of(Warning warning) {
    return switch (warning) {
      case Warning.AirGapTooSmall w -> airGap(w);
      case Warning.MainsInCirculation w ->
          start(w.supply())
              + " leads through "
              + the(w.run())
              + " straight into "
              + the(w.vessel())
              + ": one valve that sticks feeds a flood without end. Let it fill a reservoir no larger"
              + " than what "
              + the(w.vessel())
              + " has room for.";
      case Warning.CheckValveAlone w ->
          start(w.checkValve())
              + " alone keeps the floor dry when the power fails: if it does not close, "
              + volume(w.reachedFloors())
              + " reach floors. Check valves foul; add a siphon break, or raise the outlet or the"
              + " rims until nobody needs it.";
      case Warning.SingleSiphonBreak w ->
          start(w.run())
              + " has one hole only to break its siphon, "
              + the(w.siphonBreak())
              + ", and a snail or some algae is enough to close it. Drill a second one, and clean both"
              + " at every service.";
      case Warning.EmergencyNarrower w ->
          start(w.emergency())
              + " ("
              + level(w.bore())
              + ") is narrower than "
              + the(w.main())
              + " ("
              + level(w.mainBore())
              + ") whose place it must take. Make it as wide.";
      case Warning.EmergencyWithValve w ->
          start(w.emergency())
              + " has a valve, "
              + the(w.valve())
              + ", that somebody can leave shut. Leave it out.";
      case Warning.ReservoirTooLarge w ->
          start(w.reservoir())
              + " holds "
              + volume(w.water())
              + ", and "
              + the(w.vessel())
              + " with what shares its water has room for "
              + volume(w.room())
              + " once the power has failed. Keep less in it, or make room below.";
      case Warning.PanDrainNarrow w ->
          start(w.drain())
              + " is "
              + level(w.bore())
              + " wide, too narrow for "
              + the(w.basin())
              + ": at least "
              + level(w.needed())
              + ".";
      case Warning.PanDrainTakesLess w ->
          "The drains of "
              + the(w.basin())
              + " take "
              + flow(w.takes())
              + " with it brimful, and "
              + the(w.run())
              + ", which can come apart over it, carries "
              + flow(w.carries())
              + ". A wider drain or a deeper basin takes more.";
      case Warning.ContainmentSmall w ->
          start(w.basin())
              + " holds "
              + volume(w.holds())
              + " beside what stands in it; the rule asks for "
              + volume(w.needed())
              + ". For a display that is seldom possible: then know what runs over, and where.";
      case Warning.FullBasinHeavy w ->
          start(w.basin())
              + " full, with the water of what stands in it, weighs "
              + load(w.load())
              + " on its own area; ordinary floors are built for some "
              + load(w.usual())
              + ". A structural engineer approves it.";
      case Warning.OpenWithoutPower w ->
          start(w.valve())
              + " stays open when its power fails, and "
              + the(w.supply())
              + " runs on without anybody to stop it. Use one that closes.";
      case Warning.PitPumpWithoutBackup w ->
          start(w.pump())
              + " empties "
              + the(w.place())
              + " and hangs on "
              + the(w.circuit())
              + ", which has no backup: the power cut that lets water down takes it away. Drain by"
              + " gravity, or give it a supply of its own.";
    };
  }

  private String airGap(Warning.AirGapTooSmall w) {
    String where =
        w.gap() < 0
            ? level(-w.gap()) + " below the rim of "
            : level(w.gap()) + " above the rim of ";
    return start(w.supply())
        + " is drawn with an air gap, but "
        + the(w.run())
        + " ends "
        + where
        + the(w.vessel())
        + ": at least "
        + level(w.needed())
        + " above it keeps tank water out of the drinking water. A licensed plumber says which gap or"
        + " device is allowed.";
  }

  private String the(String id) {
    return wording.names().the(id);
  }

  private String start(String id) {
    return wording.names().theAtStart(id);
  }

  private String level(double metres) {
    return wording.amounts().level(metres);
  }

  private String volume(double cubicMetres) {
    return wording.amounts().volume(cubicMetres);
  }

  private String flow(double flow) {
    return wording.amounts().flow(flow);
  }

  private String load(double pascals) {
    return switch (wording.amounts().units()) {
      case METRIC -> Math.round(pascals / KILO * 10) / 10.0 + " kN/m²";
      case US -> Math.round(pascals / 47.880259) + " lb/ft²";
    };
  }
}
