package dryfloor.analysis.network;

import dryfloor.analysis.hydraulics.PumpCurve;

/** What sits in a pipe, resolved to what the solver needs. {@code along} is in metres. */
public sealed interface PipeFixture {

  double along();

  /**
   * A pump.
   *
   * @param part index of the powered part
   * @param stoppedLoss as an open passage; infinite for one that blocks
   */
  record PumpFixture(double along, int part, PumpCurve curve, double stoppedLoss)
      implements PipeFixture {}

  /**
   * A powered valve.
   *
   * @param part index of the powered part
   * @param kv wide open (m³/h at 1 bar)
   */
  record PoweredValveFixture(double along, int part, double kv) implements PipeFixture {}

  /**
   * A float valve.
   *
   * @param place index of the place whose level lifts the float
   * @param closesAt level at which it is shut (m)
   * @param band below it at which it is wide open (m)
   */
  record FloatFixture(double along, double kv, int place, double closesAt, double band)
      implements PipeFixture {}

  /** Anything that always costs the same: hand valve, strainer, device, restrictor. */
  record FixedFixture(double along, double loss) implements PipeFixture {}

  /**
   * Dirt or a grate over the bore.
   *
   * @param free share of the bore that is free (above 0, below 1)
   * @param loss while the pipe behind it runs full (velocity heads)
   */
  record NarrowedFixture(double along, double free, double loss) implements PipeFixture {}

  /** Something shut for good. */
  record BlockedFixture(double along) implements PipeFixture {}

  /** A check valve. */
  record CheckFixture(double along, double crackingHead, double loss, double leakArea)
      implements PipeFixture {}

  /**
   * A hole that lets air in.
   *
   * @param id of the siphon break
   * @param elevation of the hole (m)
   * @param seal water over the hole that closes it again once it has let air in (m): its diameter
   * @param coveredBy index of the place whose water covers it, or -1 if none ever does
   */
  record HoleFixture(double along, String id, double elevation, double seal, int coveredBy)
      implements PipeFixture {}
}
