package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;

/** Why a range ends where it ends: what is wrong with the next value. */
public sealed interface Decider {

  /** A floor gets wet after this failure. */
  record FloorWet(Failure failure) implements Decider {}

  /**
   * A vessel that animals live in loses its water after this failure.
   *
   * @param vessel id
   * @param share of the water of normal operation that it ends with
   */
  record WaterLost(Failure failure, String vessel, double share) implements Decider {}

  /**
   * A vessel that animals live in ends too fresh or too salty after this failure.
   *
   * @param vessel id
   * @param salinity that it ends with (g/kg)
   */
  record SalinityOut(Failure failure, String vessel, double salinity) implements Decider {}

  /** This failure has no answer there, which never counts as dry. */
  record NoAnswer(Failure failure, String reason) implements Decider {}

  /** Normal operation spills or never settles. */
  record NotSound(String reason) implements Decider {}

  /**
   * The level does not stay there: a control or a supply fills it up again.
   *
   * @param settled where it stands in normal operation (elevation, m)
   */
  record FilledUpAgain(double settled) implements Decider {}

  /**
   * A pump that moves water today moves none when all is well: dry floors there say nothing.
   *
   * @param pump id
   * @param sucksAir whether the water stands below its inlet; if not, it lifts none
   */
  record PumpIdle(String pump, boolean sucksAir) implements Decider {}

  /**
   * An emergency drain that is dry today carries water when all is well: it would be no spare any
   * more.
   *
   * @param run id
   */
  record EmergencyDrainRuns(String run) implements Decider {}

  /** It can't be drawn like that. */
  record NotDrawable(String reason) implements Decider {}

  /** Nothing that is known: further values were not looked at. */
  record NotLookedAt() implements Decider {}
}
