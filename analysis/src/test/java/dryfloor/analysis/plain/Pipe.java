package dryfloor.analysis.plain;

import java.util.List;

/**
 * A run or a piece of one: full of water, or with air at its crest and two columns that fall to
 * what stands at their ends.
 */
final class Pipe {

  private static final double NO_FLOW = 1e-10;
  private static final double NO_LEG = 1e-7;

  /** What a pump moves that sucks air: a drop a second (m³/s). */
  static final double STARVED = 1e-7;

  private static final double BARE = 1e-3;

  /** What still lies over an opening from which water hangs or runs off (m). */
  private static final double FILM = 2e-5;

  /** Ends that differ by less than this lie level (m). */
  private static final double LEVEL = 1e-3;

  /**
   * Widest bore that holds water over an open lower end with air under it: 1.84 times the capillary
   * length of 2.7 mm to either side (stability of a meniscus after Rayleigh and Taylor, from
   * memory).
   */
  private static final double HANGS_IN = 0.01;

  /**
   * An end: what is there, and how high the opening is.
   *
   * @param loose whether it came loose, so that it is shaken
   */
  record End(Node node, double elevation, boolean loose) {

    End(Node node, double elevation) {
      this(node, elevation, false);
    }

    /** Where the pipe goes on beyond a hole in it: there is no mouth that water has to enter. */
    boolean isAtLeak() {
      return node instanceof Tee tee && !tee.holes.isEmpty();
    }

    double level() {
      return node.level();
    }

    double head() {
      return node instanceof Tee tee && !tee.isOpen() ? level() : Math.max(level(), elevation);
    }

    /** Whether no more than a film lies over it. */
    boolean isBare() {
      return (!(node instanceof Tee tee) || tee.isOpen()) && level() <= elevation + FILM;
    }

    boolean isUncovered() {
      return node instanceof Tee tee
          ? tee.isOpen() && level() <= elevation + 1e-6
          : level() <= elevation + 1e-6;
    }
  }

  /** A hole that lets air in while it is not covered. */
  record AirHole(String id, double along, double elevation, Node coveredBy) {
    boolean isOpen() {
      return coveredBy.level() < elevation;
    }
  }

  final String run;
  final End from;
  final End to;
  final double bore;
  final Stretch whole;
  final Stretch up;
  final Stretch down;
  final Profile legA;
  final Profile legB;
  final double crest;
  final double crestAlong;
  final boolean vented;

  /** Whether water that air no longer passes freely is taken to fill it. */
  final boolean early;

  final boolean blocked;

  /** Share of the mouth at the first end that is free. */
  final double free;

  final List<AirHole> holes;

  boolean full;

  /** Most that the places at its ends can give now (m³/s). */
  double mostFromFirst = Double.POSITIVE_INFINITY;

  double mostFromSecond = Double.POSITIVE_INFINITY;
  double inA;
  double inB;

  /** Flow into the first end, over the crest, and out of the second end (m³/s). */
  double flowFrom;

  double over;
  double flowTo;

  Pipe(
      String run,
      End from,
      End to,
      Profile profile,
      Stretch whole,
      boolean vented,
      boolean early,
      boolean blocked,
      double free,
      List<AirHole> holes) {
    this.run = run;
    this.from = from;
    this.to = to;
    this.bore = whole.bore;
    this.whole = whole;
    this.vented = vented;
    this.early = early;
    this.blocked = blocked;
    this.free = free;
    this.holes = holes;
    this.crest = profile.crest().elevation();
    this.crestAlong = profile.crest().along();
    this.legA = profile.between(profile.first(), crestAlong, true);
    this.legB = profile.between(crestAlong, profile.last(), false);
    this.up = piece(profile.first(), crestAlong);
    this.down = piece(crestAlong, profile.last());
  }

  private Stretch piece(double first, double last) {
    double share = whole.length > 0 ? (last - first) / whole.length : 0;
    return new Stretch(
        bore,
        last - first,
        whole.roughness,
        whole.k * share + 1,
        whole.fixtures.stream()
            .filter(f -> isOn(Math.clamp(f.along, legA.first(), legB.last()), first, last))
            .toList(),
        whole.viscosity);
  }

  /** What sits just at the crest is on the leg beyond it, unless there is none. */
  private boolean isOn(double along, double first, double last) {
    return along >= first && (along < last || last >= legB.last());
  }

  boolean has(String fixture) {
    return whole.fixtures.stream().anyMatch(f -> f.id.equals(fixture));
  }

  // Water.

  double holds() {
    return inA + inB;
  }

  private double missing() {
    return legA.volume() + legB.volume() - inA - inB;
  }

  /** Whether its pump, running or not, has filled it up to here and something shut holds that. */
  boolean holdsWhatItsPumpLifted() {
    return up.fixtures.stream().anyMatch(Fixture.Pump.class::isInstance) && !isClear(up, -1);
  }

  /** Fills the columns with what belongs there when nothing moves. */
  void standStill() {
    if (full) {
      inA = legA.volume();
      inB = legB.volume();
    } else {
      inA = legA.volumeBelow(from.head());
      inB = legB.volumeBelow(to.head());
    }
  }

  /** Flows at the present levels, such that a step of so many seconds makes sense. */
  void evaluate(double seconds) {
    flowFrom = 0;
    over = 0;
    flowTo = 0;
    if (blocked) {
      return;
    }
    if (full) {
      fullFlow(seconds);
    } else {
      overTheCrest();
      columns(seconds);
    }
    if (flowFrom > mostFromFirst) {
      cutAt(from.node(), mostFromFirst / flowFrom);
    }
    if (-flowTo > mostFromSecond) {
      cutAt(to.node(), mostFromSecond / -flowTo);
    }
  }

  void unlimited() {
    mostFromFirst = Double.POSITIVE_INFINITY;
    mostFromSecond = Double.POSITIVE_INFINITY;
  }

  private void fullFlow(double seconds) {
    double flow = whole.flow(from.head() - to.head());
    flowFrom = flow;
    flowTo = flow;
    over = flow;
    if (missing() > NO_LEG) {
      double fill = Math.min(Math.min(Math.abs(flow), missing() / seconds), mouth(flow));
      if (flow > 0) {
        flowTo = 0;
        flowFrom = fill;
        over = Math.max(0, fill - (legA.volume() - inA) / seconds);
      } else {
        flowFrom = 0;
        flowTo = -fill;
        over = -Math.max(0, fill - (legB.volume() - inB) / seconds);
      }
    }
  }

  /** While air is in it, a mouth at the crest takes no more than its lip does. */
  private double mouth(double flow) {
    if (up.pumps() && flow > 0 && legA.volume() > NO_LEG) {
      return Double.POSITIVE_INFINITY;
    }
    return Laws.lip((flow > 0 ? from.head() : to.head()) - crest, bore);
  }

  private void overTheCrest() {
    if (up.pumps() && legA.volume() > NO_LEG) {
      if (inA >= legA.volume() - NO_LEG) {
        over = Math.max(0, up.flow(from.head() - crest));
      }
    } else if (Math.max(from.head(), to.head()) > crest) {
      double flow = whole.flow(from.head() - to.head());
      over =
          flow > 0
              ? Math.min(flow, free * mouth(from, legA, legB, to))
              : -Math.min(-flow, mouth(to, legB, legA, from));
    }
  }

  /**
   * The most that goes over the crest from an end: as over the lip of a mouth (m³/s). Where the
   * pipe only goes on beyond a leak, and lies level, there is no lip to fall over but at its end,
   * where that is in the open.
   */
  private double mouth(End end, Profile leg, Profile beyond, End far) {
    boolean goesOn =
        end.isAtLeak() && leg.volume() < NO_LEG && beyond.isLevel() && !far.isUncovered();
    return goesOn ? Double.POSITIVE_INFINITY : Laws.lip(end.head() - crest, bore);
  }

  private void columns(double seconds) {
    double intoB =
        over > 0 && pressesOn(to, legB)
            ? over - passing(legB, down, inB, to, seconds, 1)
            : column(legB, down, inB, to, seconds, -1);
    double intoA =
        over < 0 && pressesOn(from, legA)
            ? -over - passing(legA, up, inA, from, seconds, -1)
            : column(legA, up, inA, from, seconds, 1);
    flowFrom = over + intoA;
    flowTo = over - intoB;
  }

  /** Whether a tee full of water stands at the end of a leg, so that the leg is full above it. */
  private static boolean pressesOn(End end, Profile leg) {
    return end.node() instanceof Tee tee && !tee.isOpen() && leg.volume() > NO_LEG;
  }

  /**
   * What comes out below of water that falls in over the crest: what stands in the leg at the end
   * of the step has to drive it through the leg.
   */
  private double passing(
      Profile leg, Stretch stretch, double inside, End end, double seconds, int direction) {
    double comes = Math.abs(over);
    double least = isClear(stretch, -direction) ? comes - (leg.volume() - inside) / seconds : 0;
    double most = isClear(stretch, direction) ? comes + inside / seconds : 0;
    return Laws.zeroNear(
        out -> {
          double stands = end.head() + direction * stretch.drop(direction * out);
          return comes - out + (inside - leg.volumeBelow(stands)) / seconds;
        },
        comes,
        1e-6,
        least,
        Math.max(least, most));
  }

  /**
   * Flow from an end into its column: positive when the column rises. What comes in has to pass the
   * lip of the end, so that none does at one that is bare.
   */
  private static double column(
      Profile leg, Stretch stretch, double inside, End end, double seconds, int direction) {
    if (leg.volume() < NO_LEG) {
      return 0;
    }
    double stands = leg.levelOf(inside);
    double flow = direction * stretch.flow(direction * (end.head() - stands));
    if (stretch.pumps()) {
      return Math.clamp(flow, -inside / seconds, (leg.volume() - inside) / seconds);
    }
    double toCome = (leg.volumeBelow(end.head()) - inside) / seconds;
    return toCome > 0
        ? Math.clamp(
            flow, 0, Math.min(toCome, Laws.lip(end.head() - end.elevation(), stretch.bore)))
        : Math.clamp(flow, toCome, 0);
  }

  /** What comes out at a tee (m³/s). */
  double arriving(Tee tee) {
    return (to.node() == tee ? flowTo : 0) - (from.node() == tee ? flowFrom : 0);
  }

  /** Lets only a share pass at an end; what falls beyond a crest with air at it goes on falling. */
  void cutAt(Node end, double share) {
    double passing = end == from.node() ? flowFrom : flowTo;
    if (full || from.node() == to.node()) {
      cutTo(share);
      return;
    }
    double less = over * passing > 0 ? over * (1 - share) : 0;
    double kept = passing * (1 - share);
    over -= less;
    flowFrom -= end == from.node() ? kept : less;
    flowTo -= end == from.node() ? less : kept;
  }

  void cutTo(double share) {
    flowFrom *= share;
    flowTo *= share;
    over *= share;
  }

  // Air.

  boolean bringsAirTo(Tee tee) {
    return !full
        && !blocked
        && ((from.node() == tee && airStandsAt(legA, inA, from))
            || (to.node() == tee && airStandsAt(legB, inB, to)));
  }

  private static boolean airStandsAt(Profile leg, double inside, End end) {
    return leg.volume() < NO_LEG || inside <= leg.volumeBelow(end.elevation() + 1e-6);
  }

  /** Lets air in or out where the levels ask for it. */
  boolean changesMode() {
    if (blocked) {
      return false;
    }
    boolean pumpsChange = barePumps();
    if (full ? letsAirIn() : fills()) {
      full = !full;
      return true;
    }
    return pumpsChange;
  }

  /**
   * A pump whose opening lies bare by a millimetre or in the dry lets fall what it lifted, until it
   * is covered.
   */
  private boolean barePumps() {
    boolean changed = false;
    for (Fixture fixture : whole.fixtures) {
      if (fixture instanceof Fixture.Pump pump) {
        boolean bare = isBare(pump);
        changed |= bare != pump.bare;
        pump.bare = bare;
      }
    }
    return changed;
  }

  private boolean isBare(Fixture.Pump pump) {
    return switch (from.node()) {
      case Place place -> {
        boolean dry = place.level() - place.bottom < 1e-6;
        yield dry || place.level() - from.elevation() < (pump.bare ? BARE : -BARE);
      }
      case Tee tee -> tee.isOpen() && !tee.getsWaterFromOthersThan(this);
    };
  }

  /** What lies level is full only when a millimetre stands over it. */
  private boolean bothEndsAboveCrest() {
    double full = crest + (legA.isLevel() && legB.isLevel() ? LEVEL : 1e-4);
    return from.head() > full && to.head() > full;
  }

  private boolean letsAirIn() {
    if (vented && !(from.head() > crest && to.head() > crest)) {
      return true;
    }
    double flow = whole.flow(from.head() - to.head());
    boolean sucksAtFirst = from.isUncovered() && flow > NO_FLOW && !whole.pumps();
    boolean sucksAtSecond = to.isUncovered() && flow < -NO_FLOW;
    boolean stands = Math.abs(flow) <= NO_FLOW && !whole.pumps();
    boolean fallsOut =
        ((stands || (whole.pumps() && isStarved())) && fallsOutOf(to, isClear(down, 1)))
            || (stands && fallsOutOf(from, isClear(up, -1)));
    return sucksAtFirst
        || sucksAtSecond
        || fallsOut
        || fillsNoMore()
        || runsOutLevel()
        || airAtHole(flow)
        || columnParts(flow);
  }

  /** Whether it began to fill and what filled it has stopped. */
  private boolean fillsNoMore() {
    return missing() > NO_LEG && flowFrom == 0 && flowTo == 0 && !bothEndsAboveCrest();
  }

  /** Whether its pump runs and gets no water. */
  private boolean isStarved() {
    return Math.abs(flowFrom) <= STARVED;
  }

  /**
   * A level pipe runs out of an end where air can pass the water in it, if the other is bare too.
   */
  private boolean runsOutLevel() {
    return bore > HANGS_IN
        && from.isBare()
        && to.isBare()
        && crest < Math.min(from.elevation(), to.elevation()) + LEVEL;
  }

  /**
   * What hangs below the crest in an open end falls out where nothing shut holds it; in a thin hose
   * it goes on hanging, unless that came loose and is shaken.
   */
  private boolean fallsOutOf(End end, boolean clear) {
    return end.isBare()
        && crest > end.elevation() + 1e-3
        && clear
        && (bore > HANGS_IN || end.loose());
  }

  private static boolean isClear(Stretch stretch, int direction) {
    return !stretch.blocks(direction);
  }

  private boolean airAtHole(double flow) {
    return holes.stream()
        .anyMatch(hole -> hole.isOpen() && headAt(hole.along(), flow) < hole.elevation());
  }

  private boolean columnParts(double flow) {
    return headAt(crestAlong, flow) - crest < -10.09;
  }

  /** Elevation plus pressure head at a place along the full pipe (m). */
  private double headAt(double along, double flow) {
    if (flow > 0) {
      return from.head() - lossWithVelocityHead(legA.first(), along, flow);
    }
    if (flow < 0) {
      return to.head() + lossWithVelocityHead(along, legB.last(), flow);
    }
    boolean shutBefore =
        whole.fixtures.stream()
            .anyMatch(f -> f.along <= along && (f.blocksForward() || f.blocksBackward()));
    return shutBefore ? to.head() : from.head();
  }

  /**
   * Drowned by its bore, and fast enough to carry air down (Wisner and others 1975), or in doubt
   * only too fast for air to pass (Hills 1983).
   */
  private boolean primes(double depth) {
    double clearing = Math.sqrt(Laws.G * bore) * (early ? 0.3 : 0.825 + 0.25);
    return depth >= bore && Math.abs(over) >= clearing * legA.boreArea();
  }

  private double lossWithVelocityHead(double first, double last, double flow) {
    return new Stretch(
            bore,
            last - first,
            whole.roughness,
            whole.k * (last - first) / whole.length + 1,
            whole.fixtures.stream().filter(f -> f.along >= first && f.along <= last).toList(),
            whole.viscosity)
        .drop(flow);
  }

  private boolean fills() {
    if (bothEndsAboveCrest()) {
      return true;
    }
    if (vented) {
      return false;
    }
    double flow = whole.flow(from.head() - to.head());
    if (airAtHole(flow) || (to.isUncovered() && flow < -NO_FLOW) || columnParts(flow)) {
      return false;
    }
    if (up.pumps() && legA.volume() > NO_LEG) {
      return over > STARVED && inA >= legA.volume() - NO_LEG;
    }
    if (legB.volume() < NO_LEG && legA.volume() > NO_LEG) {
      return from.head() > crest + 1e-4 && inA >= legA.volume() - NO_LEG;
    }
    return Math.abs(flow) > NO_FLOW && primes(Math.max(from.head(), to.head()) - crest);
  }
}
