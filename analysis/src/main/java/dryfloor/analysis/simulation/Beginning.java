package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Lip;
import dryfloor.analysis.network.ControlUnit;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.Succession;
import dryfloor.analysis.network.Tee;
import dryfloor.model.element.Control;
import dryfloor.model.element.Vessel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where a simulation begins: at the declared levels, or where another one ended. */
final class Beginning {

  private Beginning() {}

  /** The declared levels, with every run full of water that would stay so. */
  static State asDeclared(FlowNetwork network) {
    State state = new State(network);
    Map<String, Vessel> vessels = new HashMap<>();
    network.installation().vessels().forEach(vessel -> vessels.put(vessel.id(), vessel));
    for (int place = 0; place < state.volumes.length; place++) {
      Place what = network.places().get(place);
      Vessel vessel = vessels.get(what.id());
      if (vessel != null && what.kind().isPool() && vessel.level() > vessel.bottom()) {
        state.volumes[place] = what.table().volume(vessel.level());
        state.salt[place] = state.volumes[place] * vessel.salinity();
      }
    }
    setControls(network, state);
    state.board.update();
    fillDevices(network, state);
    for (int tee = 0; tee < state.teeFull.length; tee++) {
      state.teeFull[tee] = network.tees().get(tee).startsFull();
      state.teeHeads[tee] = firstHead(network, state, tee);
    }
    FlowField field = new FlowField(network, state);
    field.rewire();
    field.evaluate(state.volumes);
    for (int i = 0; i < network.pipes().size(); i++) {
      fillOrRest(network, state, field, i);
    }
    return state;
  }

  private static void setControls(FlowNetwork network, State state) {
    for (int i = 0; i < network.controls().size(); i++) {
      ControlUnit unit = network.controls().get(i);
      if (unit.control() instanceof Control.LevelSwitch levelSwitch) {
        Place place = network.places().get(unit.place());
        double level = place.table().level(state.volumes[unit.place()]);
        state.board.setActed(
            i,
            ControlTriggers.actsWhenLow(levelSwitch.action())
                ? level <= levelSwitch.lower()
                : level >= levelSwitch.upper());
      }
    }
  }

  private static void fillDevices(FlowNetwork network, State state) {
    for (Path path : network.paths()) {
      if (path instanceof Path.Held held && held.isFed() && state.board.runs(held.part())) {
        fill(network, state, held.to(), held.holds(), List.of(held.from()));
      }
    }
  }

  /** Puts water into a place, of the salinity of the first of these places that has any. */
  private static void fill(
      FlowNetwork network, State state, int place, double volume, List<Integer> sources) {
    state.volumes[place] = volume;
    state.salt[place] = volume * salinity(network, state, sources);
  }

  private static double salinity(FlowNetwork network, State state, List<Integer> sources) {
    for (int source : sources) {
      if (network.places().get(source).kind() == Place.Kind.SUPPLY) {
        return Salt.outsideSalinities(network)[source];
      }
      if (state.volumes[source] > 0) {
        return state.salt[source] / state.volumes[source];
      }
    }
    return 0;
  }

  /** A first guess: the highest water that reaches the tee. */
  private static double firstHead(FlowNetwork network, State state, int tee) {
    double head = network.tees().get(tee).elevation();
    for (Pipe pipe : network.pipes()) {
      for (int side = 0; side < 2; side++) {
        Place other = network.places().get(pipe.leg(1 - side).end().place());
        boolean here = pipe.leg(side).end().junction() == tee;
        if (here && (other.kind() == Place.Kind.VESSEL || other.kind() == Place.Kind.BASIN)) {
          double level = other.table().level(state.volumes[pipe.leg(1 - side).end().place()]);
          head = Math.max(head, level);
        }
      }
    }
    return head;
  }

  private static void fillOrRest(FlowNetwork network, State state, FlowField field, int i) {
    Pipe pipe = network.pipes().get(i);
    boolean full = pipe.startsFull() && startsFull(network, state, field, i);
    state.pipes[i].full = full;
    List<Integer> sources = Sources.of(network, pipe);
    for (int side = 0; side < 2; side++) {
      Pipe.Leg leg = pipe.leg(side);
      boolean negligible = leg.negligible();
      state.pipes[i].legs[side] = negligible ? PipeMode.Leg.BRIMFUL : PipeMode.Leg.AT_REST;
      boolean stays =
          full || (pipe.startsFull() && isHeldBeforeTheFall(network, state, field, i, side));
      double volume = stays ? leg.volume() : standing(network, field, leg);
      fill(network, state, leg.column(), volume, sources);
    }
  }

  private static boolean startsFull(FlowNetwork network, State state, FlowField field, int i) {
    Pipe pipe = network.pipes().get(i);
    FullPipe full = new FullPipe(network, state, field, i, field.builder.through(i));
    if (full.touchesFullTee()) {
      return true;
    }
    if (!full.wouldStayFull()) {
      return false;
    }
    boolean overLip =
        pipe.leg(0).negligible() && network.places().get(pipe.leg(0).end().place()).kind().isPool();
    if (!overLip) {
      return true;
    }
    PipeEnd lip = pipe.leg(0).end();
    double depth = Math.max(field.levels[lip.place()] - lip.elevation(), 0);
    return full.flowIfFull() <= Lip.flow(depth, pipe.bore(), field.builder.laws(i).freeLip(0));
  }

  /** Whether a leg was full, and what holds it lets only what is beyond the crest fall out. */
  private static boolean isHeldBeforeTheFall(
      FlowNetwork network, State state, FlowField field, int i, int side) {
    return new FullPipe(network, state, field, i, field.builder.through(i)).fallsOutOf(1 - side);
  }

  /** A supply keeps its line full to the crest since it filled last, as high as it can lift. */
  private static double standing(FlowNetwork network, FlowField field, Pipe.Leg leg) {
    LevelTable table = network.places().get(leg.column()).table();
    Place place = network.places().get(leg.end().place());
    double level =
        switch (place.kind()) {
          case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE -> field.levels[leg.end().place()];
          case SUPPLY -> place.head();
          case DRAIN, BEYOND, OUTSIDE -> table.bottom();
        };
    return Math.clamp(table.volume(Math.max(level, table.bottom())), 0, leg.volume());
  }

  /** Where normal operation ended, in a network with failures built in. */
  static State after(FlowNetwork normal, State settled, FlowNetwork failed) {
    State state = new State(failed);
    state.board.inherit(settled.board);
    Map<String, Integer> before = new HashMap<>();
    for (int place = 0; place < normal.places().size(); place++) {
      Place what = normal.places().get(place);
      if (what.kind() != Place.Kind.COLUMN) {
        before.put(what.kind() + " " + what.id(), place);
      }
    }
    for (int place = 0; place < state.volumes.length; place++) {
      Place what = failed.places().get(place);
      Integer same = before.get(what.kind() + " " + what.id());
      if (same != null && what.kind().isPool()) {
        state.volumes[place] = settled.volumes[same];
        state.salt[place] = settled.salt[same];
      }
    }
    inheritTees(normal, settled, failed, state);
    new RunsHandedOn(normal, settled, failed, state).handOn();
    return state;
  }

  /** Where a stage of a sequence ended, in the network of the next one, at its time (s). */
  static State goingOn(FlowNetwork before, State ended, Succession succession, double time) {
    State state = after(before, ended, succession.network());
    state.time = time;
    state.openedHoles.addAll(ended.openedHoles);
    state.doubtfulPrimings.addAll(ended.doubtfulPrimings);
    for (int place = 0; place < before.places().size(); place++) {
      if (!before.places().get(place).kind().isPool()) {
        state.volumes[succession.place(place)] = ended.volumes[place];
      }
    }
    return state;
  }

  private static void inheritTees(
      FlowNetwork normal, State settled, FlowNetwork failed, State state) {
    for (int tee = 0; tee < failed.tees().size(); tee++) {
      Tee what = failed.tees().get(tee);
      int same = -1;
      for (int old = 0; old < normal.tees().size(); old++) {
        same = normal.tees().get(old).id().equals(what.id()) ? old : same;
      }
      if (same >= 0) {
        state.teeFull[tee] = settled.teeFull[same];
        state.teeRunsOff[tee] = settled.teeRunsOff[same];
        state.teeHeads[tee] = settled.teeHeads[same];
      } else {
        state.teeFull[tee] = wasFull(normal, settled, what.id());
        state.teeHeads[tee] = firstHead(failed, state, tee);
      }
    }
  }

  private static boolean wasFull(FlowNetwork normal, State settled, String run) {
    for (int i = 0; i < normal.pipes().size(); i++) {
      if (normal.pipes().get(i).run().equals(run)) {
        return settled.pipes[i].full;
      }
    }
    return false;
  }
}
