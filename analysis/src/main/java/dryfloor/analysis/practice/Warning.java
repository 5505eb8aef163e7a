package dryfloor.analysis.practice;

/** A place where a drawing does not follow a rule; ids of the drawing, SI units. */
public sealed interface Warning {

  /** The rule that is not followed. */
  default Rule rule() {
    return switch (this) {
      case AirGapTooSmall w -> Rule.AIR_GAP;
      case MainsInCirculation w -> Rule.NO_MAINS_IN_CIRCULATION;
      case CheckValveAlone w -> Rule.CHECK_VALVE_NOT_ALONE;
      case SingleSiphonBreak w -> Rule.TWO_SIPHON_BREAKS;
      case EmergencyNarrower w -> Rule.EMERGENCY_AS_WIDE;
      case EmergencyWithValve w -> Rule.EMERGENCY_WITHOUT_VALVE;
      case ReservoirTooLarge w -> Rule.RESERVOIR_FITS;
      case PanDrainNarrow w -> Rule.PAN_DRAIN_WIDTH;
      case PanDrainTakesLess w -> Rule.PAN_DRAIN_TAKES_INFLOW;
      case ContainmentSmall w -> Rule.CONTAINMENT_VOLUME;
      case FullBasinHeavy w -> Rule.FLOOR_LOAD;
      case OpenWithoutPower w -> Rule.SHUT_WITHOUT_POWER;
      case PitPumpWithoutBackup w -> Rule.OWN_POWER;
    };
  }

  /**
   * Drinking water ends too close above a vessel, or in it.
   *
   * @param run whose outlet it is
   * @param gap from the rim of the vessel up to the outlet (m); negative below the rim
   * @param needed (m)
   */
  record AirGapTooSmall(String supply, String run, String vessel, double gap, double needed)
      implements Warning {}

  /** A supply without end leads straight into a vessel of the circulation. */
  record MainsInCirculation(String supply, String run, String vessel) implements Warning {}

  /**
   * Power loss wets a floor if this valve does not close, and does not if it does.
   *
   * @param reachedFloors then (m³)
   */
  record CheckValveAlone(String checkValve, double reachedFloors) implements Warning {}

  /** A run has one hole only to break its siphon. */
  record SingleSiphonBreak(String run, String siphonBreak) implements Warning {}

  /** An emergency drain is narrower than the main drain of its vessel. Bores in m. */
  record EmergencyNarrower(String emergency, double bore, String main, double mainBore)
      implements Warning {}

  /** A valve can shut an emergency drain. */
  record EmergencyWithValve(String emergency, String valve) implements Warning {}

  /**
   * A reservoir holds more than what it feeds has room for after power loss.
   *
   * @param vessel that it feeds
   * @param water in the reservoir (m³)
   * @param room left in the vessel and those beside it after power loss (m³)
   */
  record ReservoirTooLarge(String reservoir, String vessel, double water, double room)
      implements Warning {}

  /** The drain of a basin is narrow. Bores in m. */
  record PanDrainNarrow(String basin, String drain, double bore, double needed)
      implements Warning {}

  /**
   * The drains of a basin take less than a run that can pour into it carries.
   *
   * @param takes what all drains of the basin take when it is brimful (m³/s)
   * @param run that lands in it if it comes apart
   * @param carries what that run carries in normal operation (m³/s)
   */
  record PanDrainTakesLess(String basin, double takes, String run, double carries)
      implements Warning {}

  /**
   * A basin holds too little of what stands in it.
   *
   * @param holds besides what stands in it (m³)
   * @param needed (m³)
   */
  record ContainmentSmall(String basin, double holds, double needed) implements Warning {}

  /**
   * A full basin upstairs weighs more than ordinary floors are built for.
   *
   * @param load of the full basin and the water in what stands in it, on its plan area (Pa)
   * @param usual for which floors are built (Pa)
   */
  record FullBasinHeavy(String basin, double load, double usual) implements Warning {}

  /** A valve that is to shut a supply off stays open when its power fails. */
  record OpenWithoutPower(String supply, String valve) implements Warning {}

  /** A pump that empties a basin or floor has no backup. */
  record PitPumpWithoutBackup(String pump, String place, String circuit) implements Warning {}
}
