package dryfloor.model.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An inline part of a run.
 *
 * <p>{@code along} is always the distance from the run's first end (m). Ids are unique in the whole
 * installation.
 */
public sealed interface Part {

  String id();

  String name();

  double along();

  /** The same part so far (m) along its run. */
  Part at(double along);

  /**
   * A pump that pushes from the run's first end towards its second.
   *
   * @param curve the maker's curve at full speed, two or more points with falling head
   * @param speed fraction of full speed, above 0 up to 1.2
   * @param kind what it is when it stands still
   * @param stoppedLoss loss coefficient of the stopped pump as an open passage (velocity heads in
   *     the run's bore); a displacement pump has none and blocks
   * @param primesAgain whether it takes up water again by itself after it has sucked air
   * @param standsIn id of the basin, vessel or floor on which its leaks land
   */
  record Pump(
      String id,
      String name,
      double along,
      List<CurvePoint> curve,
      double speed,
      Pump.Kind kind,
      Power power,
      double stoppedLoss,
      boolean primesAgain,
      Optional<String> standsIn)
      implements Part {

    public Pump {
      curve = List.copyOf(curve);
    }

    @Override
    public Pump at(double along) {
      return with(along, speed);
    }

    /** The same pump at another fraction of full speed. */
    public Pump withSpeed(double other) {
      return with(along, other);
    }

    private Pump with(double aPlace, double aSpeed) {
      return new Pump(
          id, name, aPlace, curve, aSpeed, kind, power, stoppedLoss, primesAgain, standsIn);
    }

    /** A stopped centrifugal pump lets water through both ways, a displacement pump blocks. */
    public enum Kind {
      CENTRIFUGAL,
      DISPLACEMENT
    }

    /** Head (m) at a flow (m³/s). */
    public record CurvePoint(double flow, double head) {}
  }

  /**
   * A valve that a person or a drive sets.
   *
   * @param kv flow in m³/h at 1 bar when fully open
   * @param opening fraction open in normal operation, 0 to 1
   * @param drive who moves it
   */
  record Valve(String id, String name, double along, double kv, double opening, Drive drive)
      implements Part {

    @Override
    public Valve at(double along) {
      return new Valve(id, name, along, kv, opening, drive);
    }

    /** The same valve, opened by another fraction in normal operation. */
    public Valve withOpening(double other) {
      return new Valve(id, name, along, kv, other, drive);
    }

    /** Who moves a valve. */
    public sealed interface Drive {

      /**
       * A handle.
       *
       * @param use what the valve is there for, which says how a person can leave it wrong
       */
      record Hand(Use use) implements Drive {}

      /**
       * An electric drive.
       *
       * @param rest where it goes without power
       */
      record Powered(Power power, Rest rest) implements Drive {}
    }

    /** What a hand valve is there for. */
    public enum Use {
      TRIM,
      ISOLATE,
      FILL,
      EMPTY
    }

    /** Where a powered valve goes without power. */
    public enum Rest {
      OPEN,
      CLOSED,
      AS_IT_IS
    }
  }

  /**
   * A mechanical float valve: wide open while the water is a band or more below its closing level,
   * shut at that level.
   *
   * @param kv flow in m³/h at 1 bar when wide open
   * @param vessel id of the vessel whose water lifts the float
   * @param closesAt elevation at which it is shut (m)
   * @param band depth below that at which it is wide open (m)
   */
  record FloatValve(
      String id, String name, double along, double kv, String vessel, double closesAt, double band)
      implements Part {

    @Override
    public FloatValve at(double along) {
      return new FloatValve(id, name, along, kv, vessel, closesAt, band);
    }
  }

  /**
   * A valve that lets water pass from the run's first end to its second only.
   *
   * @param crackingHead head at which it opens (m)
   * @param loss loss coefficient when open (velocity heads in the run's bore)
   */
  record CheckValve(String id, String name, double along, double crackingHead, double loss)
      implements Part {

    @Override
    public CheckValve at(double along) {
      return new CheckValve(id, name, along, crackingHead, loss);
    }
  }

  /**
   * Holes, or a raised outlet, that let air in when the water falls below them.
   *
   * @param elevation of the holes (m)
   * @param diameter of one hole (m)
   * @param count of holes
   * @param coveredBy id of the vessel whose water covers the holes while it stands above them; none
   *     when the holes are always in the open air
   */
  record SiphonBreak(
      String id,
      String name,
      double along,
      double elevation,
      double diameter,
      int count,
      Optional<String> coveredBy)
      implements Part {

    @Override
    public SiphonBreak at(double along) {
      return new SiphonBreak(id, name, along, elevation, diameter, count, coveredBy);
    }

    /** The same holes at another elevation (m). */
    public SiphonBreak withElevation(double other) {
      return new SiphonBreak(id, name, along, other, diameter, count, coveredBy);
    }
  }

  /**
   * A place where the run can come apart.
   *
   * @param elevation of the joint (m)
   * @param standsIn id of the basin, vessel or floor on which its water lands
   */
  record Joint(
      String id,
      String name,
      double along,
      double elevation,
      Joint.Kind kind,
      Optional<String> standsIn)
      implements Part {

    @Override
    public Joint at(double along) {
      return new Joint(id, name, along, elevation, kind, standsIn);
    }

    /** How the pieces hold together. */
    public enum Kind {
      GLUED,
      UNION,
      HOSE_CLAMP,
      PUSH_FIT
    }
  }

  /**
   * A grating or basket that can clog.
   *
   * @param loss loss coefficient when clean (velocity heads in the run's bore)
   */
  record Strainer(String id, String name, double along, double loss) implements Part {

    @Override
    public Strainer at(double along) {
      return new Strainer(id, name, along, loss);
    }
  }

  /**
   * A fixed narrow place: flow restrictor, membrane, orifice plate.
   *
   * @param kv flow in m³/h at 1 bar
   */
  record Restrictor(String id, String name, double along, double kv) implements Part {

    @Override
    public Restrictor at(double along) {
      return new Restrictor(id, name, along, kv);
    }
  }

  /**
   * Equipment that the water of the run passes through.
   *
   * @param elevation where it spills when its lid opens or its cup runs over (m)
   * @param loss loss coefficient (velocity heads in the run's bore)
   * @param holds water that it keeps only while it runs and gives back to the vessel at the run's
   *     first end when its pump stops (m³)
   * @param cupOverflow flow over its cup when it foams over (m³/s), for devices that have a cup
   * @param standsIn id of the basin, vessel or floor on which its spills land
   */
  record Device(
      String id,
      String name,
      double along,
      Device.Kind kind,
      double elevation,
      double loss,
      double holds,
      OptionalDouble cupOverflow,
      Optional<String> standsIn)
      implements Part {

    @Override
    public Device at(double along) {
      return new Device(id, name, along, kind, elevation, loss, holds, cupOverflow, standsIn);
    }

    /** What the equipment is, in the trade's words. */
    public enum Kind {
      SKIMMER,
      ROLLER_FILTER,
      REACTOR,
      CHILLER,
      CANISTER,
      STERILISER,
      PURIFIER
    }
  }
}
