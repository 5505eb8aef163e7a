package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LegProfile;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.PipeFixture.HoleFixture;
import dryfloor.analysis.network.PipeLaw;
import dryfloor.analysis.network.Place;
import java.util.List;
import java.util.Optional;

/**
 * A pipe as it is, or as it would be, full of water in the present modes: whether it stays so.
 * Gauges are above zero while it does.
 */
final class FullPipe {

  /** Flows smaller than this do not count as sucking (m³/s). */
  private static final double NOTHING = 1e-10;

  private static final double NEVER = 10;

  /** A pool that runs off over lips becomes no thinner than this for an hour (m). */
  static final double FILM = 1e-5;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Pipe pipe;
  private final PipeBranch through;
  private final List<Hole> holes;
  private final PipeLaws laws;
  private final Optional<Beyond> beyondVent;
  private final boolean pumped;

  /** Places from which water can come at each end; only asked for where there are holes. */
  private final List<List<Integer>> sources;

  private final boolean touchesFullTee;

  /**
   * A hole that lets air in.
   *
   * @param fixture where it is
   * @param beyond the pipe from there to the second end
   * @param fromCrest the pipe from the crest to it, where it lies in the open beyond one that a
   *     pump lifts to
   */
  record Hole(HoleFixture fixture, Beyond beyond, Optional<PipeLaw> fromCrest) {}

  /**
   * The inside of the pipe from some point to the second end.
   *
   * @param law of it
   * @param floats valves in it
   */
  record Beyond(PipeLaw law, List<FloatFixture> floats) {}

  /** The pipe in the present modes, with the branch that it is or would be. */
  FullPipe(FlowNetwork network, State state, FlowField field, int i, PipeBranch through) {
    this.laws = field.builder.laws(i);
    this.network = network;
    this.state = state;
    this.field = field;
    this.pipe = network.pipes().get(i);
    this.through = through;
    holes =
        pipe.fixtures().stream()
            .filter(HoleFixture.class::isInstance)
            .map(HoleFixture.class::cast)
            .map(hole -> new Hole(hole, beyond(hole.along()), fromCrest(laws, hole)))
            .toList();
    beyondVent = pipe.vented() ? Optional.of(beyond(pipe.crestAlong())) : Optional.empty();
    sources =
        holes.isEmpty()
            ? List.of()
            : List.of(Sources.behind(network, pipe, 0), Sources.behind(network, pipe, 1));
    pumped = laws.isPumped();
    touchesFullTee =
        pipe.legs().stream()
            .map(Pipe.Leg::end)
            .anyMatch(end -> end.atJunction() && state.teeFull[end.junction()]);
  }

  private Beyond beyond(double along) {
    return new Beyond(laws.inside(along, pipe.length()), laws.floats(along, pipe.length()));
  }

  private Optional<PipeLaw> fromCrest(PipeLaws laws, HoleFixture hole) {
    return laws.isPumped(0) && laws.opensBeyondCrest().contains(hole)
        ? Optional.of(laws.between(pipe.crestAlong(), hole.along()))
        : Optional.empty();
  }

  List<Hole> holes() {
    return holes;
  }

  boolean touchesFullTee() {
    return touchesFullTee;
  }

  /**
   * Whether a pipe that has taken air would stay full if it filled again: the opening that let the
   * air in must have been sealed, a hole by its own diameter of water and an end by half its bore,
   * or the water would part again at once.
   *
   * @param overCrest flow that passes its crest now, in the direction of the pipe (m³/s); at a full
   *     junction, whose head will follow, that is what it goes on with
   */
  boolean wouldStayFullAgain(double overCrest) {
    solve();
    return staysFull(touchesFullTee ? overCrest : through.driven, true);
  }

  /** Whether the pipe stays full if it is full now. */
  boolean wouldStayFull() {
    solve();
    return staysFull(through.driven, false);
  }

  /** Flow (m³/s) that the pipe would carry if it were full now. */
  double flowIfFull() {
    solve();
    return through.flow;
  }

  private void solve() {
    through.solve(field.head(through.ends[0]), field.head(through.ends[1]), field.levels);
  }

  private boolean staysFull(double flow, boolean sealed) {
    double end = sealed ? pipe.bore() / 2 : 0;
    return cover(0, flow) > (pumped ? 0 : end)
        && cover(1, flow) > end
        && coverOfLevel() > end
        && crestHolds() > 0
        && holes.stream()
            .allMatch(hole -> holds(hole, flow, sealed ? hole.fixture().seal() : 0) > 0);
  }

  /**
   * Water over an end that sucks (m); never a worry where none does, nor where a pump sucks that
   * has lifted water over a crest: without more it holds that or lets it fall back.
   */
  double cover(int side) {
    return cover(side, through.driven);
  }

  private double cover(int side, double flow) {
    double entering = side == 0 ? flow : -flow;
    PipeEnd end = pipe.leg(side).end();
    boolean sucks = entering > NOTHING;
    if (!sucks && !hangsIn(side, flow)) {
      return NEVER;
    }
    if (side == 0 && pumped) {
      return pipe.leg(0).negligible()
          ? Math.min(through.leftBeforeAirFollows(field.head(through.ends[1]), field.levels), NEVER)
          : NEVER;
    }
    return sucks ? above(end) : above(end) - FILM;
  }

  /** Water above an end (m). */
  private double above(PipeEnd end) {
    if (end.atJunction() && state.teeFull[end.junction()]) {
      return NEVER;
    }
    Place place = network.places().get(end.place());
    return switch (place.kind()) {
      case SUPPLY -> NEVER;
      case DRAIN, BEYOND, OUTSIDE -> place.head() - end.elevation();
      case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE -> field.levels[end.place()] - end.elevation();
    };
  }

  /**
   * Water over the higher covered end of a pipe that lies level (m). When both are bare it runs
   * out, at whichever end air can pass the water, though nothing sucks: all but a film, as nothing
   * lifts its water anywhere. A thin hose goes on holding it.
   */
  double coverOfLevel() {
    PipeEnd first = pipe.leg(0).end();
    PipeEnd second = pipe.leg(1).end();
    double lower = Math.min(first.elevation(), second.elevation());
    return pipe.bore() > Siphon.HANGS_IN && pipe.crest() - lower < LegProfile.LEVEL_STRETCH
        ? Math.max(above(first), above(second)) - FILM
        : NEVER;
  }

  /**
   * Whether water hangs in an open end below the crest, under a valve shut behind it or a pump that
   * gets no water, so that nothing flows that could suck air. From a pipe that is wide enough it
   * falls, and from an end that came loose it is shaken out all the same; in a fixed hose of a few
   * millimetres it goes on hanging. A valve with water above it, one in the leg itself, or a supply
   * holds what is there.
   */
  private boolean hangsIn(int side, double flow) {
    PipeEnd end = pipe.leg(side).end();
    return Math.min(Math.abs(flow), Math.abs(through.flow)) <= NOTHING
        && end.elevation() < pipe.crest()
        && field.head(through.ends[1 - side]) < pipe.crest()
        && (end.loose() || isWideOpen(side));
  }

  /** Whether what hangs in an end would fall out of it if the pipe were full. */
  boolean fallsOutOf(int side) {
    solve();
    return hangsIn(side, through.driven) && cover(side) <= 0;
  }

  private boolean isWideOpen(int side) {
    PipeLaw law = laws.leg(side);
    boolean runsOut =
        switch (law.passage()) {
          case BLOCKED -> false;
          case BOTH_WAYS -> true;
          case FORWARD_ONLY -> side == 1 || law.leakArea() > 0;
        };
    return runsOut && pipe.bore() > Siphon.HANGS_IN && !pipe.leg(side).end().atJunction();
  }

  /**
   * The best of the water over a hole, the pressure behind it, the pressure at a crest before it,
   * and the surface above it that a siphon draws from (m): air breaks the siphon when all have
   * fallen to nothing.
   *
   * <p>The surface counts wherever the hole sits, before the crest or behind it. A hole that lies
   * lower than it takes in air as soon as the water runs fast enough, but that does not stop the
   * water: up to the hole the pipe then runs like one that ends there in the air, with the surface
   * still higher than its end, and carries the air along over the crest as long as it is faster
   * than {@link dryfloor.analysis.hydraulics.Siphon#airClearingVelocity}. It may part some
   * centimetres earlier, when it has become slower than that, or run on with less water; what is
   * taken here lets down the most. Where the surface stands above the crest there is no siphon to
   * break: water goes over the crest by itself, with or without air. Nor is there one where a pump
   * pushes more over the crest than the pipe beyond it carries by itself: it then runs full up to
   * the hole, with pressure at the crest.
   */
  double holds(Hole hole) {
    return holds(hole, through.driven, 0);
  }

  private double holds(Hole hole, double flow, double seal) {
    HoleFixture fixture = hole.fixture();
    double cover =
        fixture.coveredBy() >= 0
            ? field.levels[fixture.coveredBy()] - fixture.elevation() - seal
            : Double.NEGATIVE_INFINITY;
    if (cover > 0) {
      return cover;
    }
    double line = pressureLine(hole.beyond(), flow);
    if (line > fixture.elevation()) {
      return line - fixture.elevation();
    }
    double above = siphonedSurface(flow) - fixture.elevation();
    double lasts = Math.max(above, pressedAtCrest(hole, flow)) - seal;
    if (lasts <= 0) {
      state.openedHoles.add(fixture.id());
    }
    return Math.max(line - fixture.elevation(), lasts);
  }

  /** How far the pressure line lies above the crest with air at a hole beyond it (m). */
  private double pressedAtCrest(Hole hole, double flow) {
    return hole.fromCrest()
        .filter(law -> flow > NOTHING)
        .map(law -> hole.fixture().elevation() + law.headFor(flow, 0) - pipe.crest())
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** The surface that a flow draws from if it is a siphon, with its crest above it (m). */
  private double siphonedSurface(double flow) {
    if (Math.abs(flow) <= NOTHING) {
      return Double.NEGATIVE_INFINITY;
    }
    double surface = Double.NEGATIVE_INFINITY;
    for (int place : sources.get(flow > 0 ? 0 : 1)) {
      surface = Math.max(surface, field.levels[place]);
    }
    return surface < pipe.crest() ? surface : Double.NEGATIVE_INFINITY;
  }

  /**
   * Whether the column holds at the crest: a vented crest while the pressure line runs above it
   * (m), any other while the pressure of the air can lift water over it (m³/s).
   */
  double crestHolds() {
    if (beyondVent.isPresent()) {
      return pressureLine(beyondVent.get(), through.driven) - pipe.crest();
    }
    boolean limits = through.vapourFlow < Math.abs(through.driven);
    return limits ? through.vapourFlow : NEVER;
  }

  /** The pressure line (m) where a stretch begins that goes to the second end. */
  private double pressureLine(Beyond beyond, double flow) {
    double atEnd = flow >= 0 ? laws.aboveHeadOnLeaving(1) : laws.belowHeadOnEntering(1);
    double moving = PipeBranch.movingLoss(beyond.floats(), pipe.bore(), field.levels, 0);
    return field.head(through.ends[1]) + beyond.law().headFor(flow, atEnd + moving);
  }
}
