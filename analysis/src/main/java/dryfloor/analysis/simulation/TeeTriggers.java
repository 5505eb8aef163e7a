package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.Tee;
import dryfloor.analysis.outcome.Note;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * When a tee takes air, and when it is full again.
 *
 * <p>Air reaches a full tee through a leg that has run empty down to it, and through a hole of its
 * own that is large enough, as soon as the pressure there is no higher than outside: the water that
 * a pump has lifted to an open lid falls back when the pump stops. Open to the air, the tee is a
 * small pool from which water runs on over the lips of the pipes that lead down; it is full again
 * when it stands its own bore deep.
 */
final class TeeTriggers {

  private static final double NEVER = 1;

  /**
   * A leg whose water is this near to the tee has run empty (m), or by this share of its height.
   */
  private static final double EMPTY = 2e-3;

  private static final double EMPTY_SHARE = 0.01;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;

  /** By tee: the pipes that end there, each with the side on which it does. */
  private final List<List<Meeting>> meetings = new ArrayList<>();

  /**
   * @param empty height of the water over the tee at which the leg there has run empty (m)
   */
  private record Meeting(int pipe, int side, double empty) {}

  private final TeePool pool;

  /** By tee: elevations of the holes that let air in (m). */
  private final List<List<Double>> airHoles = new ArrayList<>();

  TeeTriggers(FlowNetwork network, State state, FlowField field, TeePool pool) {
    this.pool = pool;
    this.network = network;
    this.state = state;
    this.field = field;
    network.tees().forEach(tee -> meetings.add(new ArrayList<>()));
    network.tees().forEach(tee -> airHoles.add(new ArrayList<>()));
    for (Path path : network.paths()) {
      if (path instanceof Path.PipeHole hole && letsAirIn(hole)) {
        airHoles.get(hole.junction()).add(hole.elevation());
      }
    }
    for (int i = 0; i < network.pipes().size(); i++) {
      for (int side = 0; side < 2; side++) {
        PipeEnd end = network.pipes().get(i).leg(side).end();
        if (end.atJunction()) {
          meetings
              .get(end.junction())
              .add(new Meeting(i, side, empty(network.pipes().get(i).leg(side))));
        }
      }
    }
  }

  /** A leg that lies level holds all its water within a millimetre. */
  private double empty(Pipe.Leg leg) {
    double top = network.places().get(leg.column()).table().level(leg.volume());
    return Math.min(EMPTY, EMPTY_SHARE * (top - leg.end().elevation()));
  }

  private boolean letsAirIn(Path.PipeHole hole) {
    double bore = network.tees().get(hole.junction()).bore();
    return Siphon.breakHole(hole.area(), Math.PI / 4 * bore * bore) == Siphon.BreakHole.CERTAIN;
  }

  /** Small holes that drip in drains that are not full there. */
  List<Note> drips() {
    return smallHolesInDrains()
        .filter(hole -> !state.teeFull[hole.junction()] && field.flows[hole.slot()] > 0)
        .<Note>map(hole -> new Note.DripsWhilePartlyFull(run(hole)))
        .toList();
  }

  /**
   * Drains with a small hole that carry water and are full there, with less pressure inside than
   * outside: they drip only if they are not as full as that.
   */
  Set<String> drainsThatSuckAtTheirHole() {
    return smallHolesInDrains()
        .filter(hole -> state.teeFull[hole.junction()])
        .filter(hole -> state.teeHeads[hole.junction()] < hole.elevation() && carries(run(hole)))
        .map(this::run)
        .collect(Collectors.toSet());
  }

  private Stream<Path.PipeHole> smallHolesInDrains() {
    Set<String> drains =
        network.installation().runs().stream()
            .filter(run -> run.duty() == Run.Duty.DRAIN || run.duty() == Run.Duty.EMERGENCY)
            .map(Run::id)
            .collect(Collectors.toSet());
    return network.paths().stream()
        .filter(Path.PipeHole.class::isInstance)
        .map(Path.PipeHole.class::cast)
        .filter(hole -> !letsAirIn(hole) && drains.contains(run(hole)));
  }

  private String run(Path.PipeHole hole) {
    return network.accounts().get(hole.slot()).path();
  }

  private boolean carries(String run) {
    return IntStream.range(0, field.flows.length)
        .filter(account -> network.accounts().get(account).path().equals(run))
        .anyMatch(account -> Math.abs(field.flows[account]) > DrivenFlows.RUNS);
  }

  void addTo(List<Trigger> triggers) {
    for (int i = 0; i < network.tees().size(); i++) {
      int tee = i;
      if (state.teeFull[i]) {
        triggers.add(new Trigger(name(tee) + " takes air", () -> air(tee), () -> open(tee)));
        triggers.add(
            new Trigger(
                name(tee) + " hands its pool on",
                () -> pool.goesOn(tee) ? -1 : NEVER,
                () -> pool.goOn(tee)));
      } else if (state.teeRunsOff[i]) {
        triggers.add(
            new Trigger(
                name(tee) + " has run off",
                () -> depth(tee) - network.tees().get(tee).bore() / 2,
                () -> state.teeRunsOff[tee] = false));
      } else if (!network.tees().get(i).staysOpen()) {
        triggers.add(
            new Trigger(
                name(tee) + " is full",
                () -> network.tees().get(tee).bore() - depth(tee),
                () -> close(tee)));
      }
    }
  }

  private String name(int tee) {
    return network.tees().get(tee).id();
  }

  private double depth(int tee) {
    Tee what = network.tees().get(tee);
    return field.levels[what.place()] - what.elevation();
  }

  /** How far the air is from the tee (m). */
  private double air(int tee) {
    double least = NEVER;
    double pressure = state.teeHeads[tee] - network.tees().get(tee).elevation() - FullPipe.FILM;
    for (Meeting meeting : meetings.get(tee)) {
      if (!state.pipes[meeting.pipe()].full) {
        Pipe.Leg leg = network.pipes().get(meeting.pipe()).leg(meeting.side());
        double column =
            leg.negligible()
                ? pressure
                : field.levels[leg.column()]
                    - network.tees().get(tee).elevation()
                    - meeting.empty();
        least = Math.min(least, Math.max(column, pressure));
      }
    }
    for (double hole : airHoles.get(tee)) {
      least = Math.min(least, state.teeHeads[tee] - hole);
    }
    return least;
  }

  private void open(int tee) {
    state.teeFull[tee] = false;
    state.teeRunsOff[tee] = depth(tee) > network.tees().get(tee).bore() / 2;
  }

  private void close(int tee) {
    state.teeFull[tee] = true;
    pool.runIntoPipes(tee);
    state.teeHeads[tee] = network.tees().get(tee).elevation() + network.tees().get(tee).bore();
  }
}
