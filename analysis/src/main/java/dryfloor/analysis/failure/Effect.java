package dryfloor.analysis.failure;

import java.util.OptionalInt;

/**
 * A plain change to an installation, as the simulation understands it. A failure is one or several
 * of them; several failures at once are their union. Effects hold from time zero unless they carry
 * a time of their own (s).
 *
 * <p>{@code landing} is always the id of the vessel or floor that the water reaches.
 */
public sealed interface Effect {

  /** A change that is built into the network when it is compiled, and holds as long as that. */
  sealed interface Built extends Effect {}

  record CircuitOff(String circuit, double time) implements Effect {}

  record CircuitOn(String circuit, double time) implements Effect {}

  record PumpCannotRun(String pump) implements Built {}

  /** The pump (or powered valve) runs whatever controls say, while it has power. */
  record IgnoresControls(String part) implements Built {}

  /** The pump gives this fraction of its flow at each head. */
  record PumpWeakened(String pump, double fraction) implements Built {}

  /** A valve of any kind stands at this opening (0 to 1) and nothing moves it. */
  record ValveHeld(String valve, double opening) implements Built {}

  /** A powered valve keeps its opening of the moment whatever happens. */
  record ValveFrozen(String valve) implements Built {}

  record CheckValveHeldOpen(String checkValve) implements Built {}

  /** A closed check valve lets water back through this area (m²). */
  record CheckValveLeaks(String checkValve, double area) implements Built {}

  record CheckValveHeldShut(String checkValve) implements Built {}

  record SiphonBreakHeldShut(String siphonBreak) implements Built {}

  /**
   * A run into which water falls over a drowned lip fills as soon as air no longer passes freely
   * beside the water, not only once the water certainly carries it along.
   */
  record PrimesEarly(String run) implements Built {}

  /** A run that leaks is never full where its hole is, whatever it carries. */
  record RunsPartlyFull(String run) implements Built {}

  /** Only this fraction of the bore is free at the run's first end; 0 blocks it. */
  record RunNarrowed(String run, double free) implements Built {}

  /** Only this fraction of the length is free; 0 blocks it. */
  record WeirNarrowed(String weir, double free) implements Built {}

  /**
   * The run comes apart; each half pours out where it parted.
   *
   * @param partsBefore how many of its parts lie before the cut, in order along it; where nothing
   *     is said the distance decides
   */
  record RunParted(
      String run, double along, double elevation, OptionalInt partsBefore, String landing)
      implements Built {}

  /**
   * The run leaks through a hole.
   *
   * @param partsBefore how many of its parts lie before the hole, as in {@link RunParted}
   * @param area of the hole (m²)
   * @param blockedBeyond whether the run is blocked right after the hole
   */
  record RunLeaks(
      String run,
      double along,
      double elevation,
      OptionalInt partsBefore,
      double area,
      boolean blockedBeyond,
      String landing)
      implements Built {}

  /** An end of a run lies somewhere else, open to the air unless water covers it. */
  record EndMoved(String run, Failure.End end, String landing, double elevation) implements Built {}

  /** A hole in a vessel's wall at this elevation. */
  record VesselLeaks(String vessel, double elevation, double area, String landing)
      implements Built {}

  /** All the water of a vessel lands somewhere at once, and the vessel holds none any more. */
  record VesselLost(String vessel, String landing) implements Built {}

  /**
   * Water is thrown out of a vessel until its level falls to an inlet.
   *
   * @param powered id of the pump that throws it
   */
  record Thrown(String vessel, double downTo, double flow, String powered, String landing)
      implements Built {}

  record DrainTakesNothing(String drain) implements Built {}

  /** The pressure of a supply is this many times what was drawn. */
  record SupplyPressureTimes(String supply, double factor) implements Built {}

  /** A level switch feels low (or high) water whatever the level. */
  record SwitchHeld(String levelSwitch, boolean low) implements Built {}

  /** A level switch acts within this band (m) about the middle of its two levels. */
  record SwitchBand(String levelSwitch, double band) implements Built {}

  /** A leak sensor or timer never acts. */
  record ControlDead(String control) implements Built {}

  /** A leak sensor or timer acts at once, without cause. */
  record ControlTripped(String control) implements Built {}

  record HandSwitchSet(String handSwitch, boolean on) implements Built {}

  /**
   * Water from outside poured into a vessel.
   *
   * @param volume of the water (m³)
   * @param salinity of the water (g/kg)
   * @param time when it is poured (s)
   */
  record Poured(String vessel, double volume, double salinity, double time) implements Effect {

    /** Fresh water. */
    public Poured(String vessel, double volume, double time) {
      this(vessel, volume, 0, time);
    }
  }

  /**
   * Water taken out of a vessel and away to the outside, as much as can be reached.
   *
   * @param volume that is meant to be taken (m³)
   * @param downTo above the vessel's bottom: water below that can't be reached (m)
   * @param time when it is taken (s)
   */
  record Taken(String vessel, double volume, double downTo, double time) implements Effect {}

  /** Somebody comes only after this many times the unattended time. */
  record AwayTimes(double factor) implements Effect {}

  /** The unattended time counts from a time (s), that of the last event of a sequence. */
  record AwayFrom(double time) implements Effect {}

  /**
   * Something built in that holds from a time to a time only (s); endless if nobody mends it. Where
   * two that set the same thing hold at once, the one that began later counts.
   */
  record During(double from, double to, Built what) implements Effect {}

  /** Nothing but news for the story: a failure of a sequence begins, or is over, at a time (s). */
  record News(String failure, boolean over, double time) implements Effect {}
}
