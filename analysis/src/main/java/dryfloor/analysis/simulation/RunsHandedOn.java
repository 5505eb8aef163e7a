package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Hands the water that stands in runs on to the pipes that are left of them in another network of
 * the same drawing: one pipe that is still the same, two where a run has come apart or leaks, one
 * again where it has been put together. All of it is handed on, to the last bit.
 */
final class RunsHandedOn {

  private final FlowNetwork before;
  private final State settled;
  private final FlowNetwork next;
  private final State state;

  RunsHandedOn(FlowNetwork before, State settled, FlowNetwork next, State state) {
    this.before = before;
    this.settled = settled;
    this.next = next;
    this.state = state;
  }

  void handOn() {
    before.pipes().stream().map(Pipe::run).distinct().forEach(this::handOn);
  }

  private void handOn(String run) {
    List<Integer> old = pipesOf(before, run);
    List<Integer> left = pipesOf(next, run);
    if (areTheSame(old, left)) {
      for (int i = 0; i < old.size(); i++) {
        handOnWhole(old.get(i), left.get(i));
      }
    } else if (old.size() == 1) {
      handOnPieces(old.getFirst(), left);
    } else {
      putTogether(run, old, left);
    }
  }

  private static List<Integer> pipesOf(FlowNetwork network, String run) {
    return IntStream.range(0, network.pipes().size())
        .filter(i -> network.pipes().get(i).run().equals(run))
        .boxed()
        .toList();
  }

  private boolean areTheSame(List<Integer> old, List<Integer> left) {
    return old.size() == left.size()
        && IntStream.range(0, old.size())
            .allMatch(
                i -> hasSameLegs(before.pipes().get(old.get(i)), next.pipes().get(left.get(i))));
  }

  /** Whether a pipe has its crest where it was: an end that falls to the floor may shift it. */
  private static boolean hasSameLegs(Pipe before, Pipe pipe) {
    return before.crestAlong() == pipe.crestAlong()
        && before.crest() == pipe.crest()
        && before.length() == pipe.length()
        && before.cutFrom() == pipe.cutFrom();
  }

  private void handOnWhole(int old, int left) {
    Pipe was = before.pipes().get(old);
    Pipe pipe = next.pipes().get(left);
    PipeMode mode = settled.pipes[old];
    inheritMode(mode, left);
    for (int side = 0; side < 2; side++) {
      Pipe.Leg leg = pipe.leg(side);
      state.pipes[left].legs[side] =
          leg.negligible()
              ? PipeMode.Leg.BRIMFUL
              : mode.full ? PipeMode.Leg.MOVING : mode.legs[side];
      state.volumes[leg.column()] = settled.volumes[was.leg(side).column()];
    }
    shareOut(standingIn(settled.volumes, was), standingIn(settled.salt, was), List.of(left));
  }

  private void handOnPieces(int old, List<Integer> left) {
    Pipe was = before.pipes().get(old);
    PipeMode mode = settled.pipes[old];
    for (int i : left) {
      Pipe pipe = next.pipes().get(i);
      inheritMode(mode, i);
      for (int side = 0; side < 2; side++) {
        Pipe.Leg leg = pipe.leg(side);
        state.pipes[i].legs[side] = moving(leg);
        state.volumes[leg.column()] = share(was, mode, pipe, leg, side);
      }
      state.pipes[i].full |= left.size() > 1 && isFullPiece(pipe);
    }
    shareOut(standingIn(settled.volumes, was), standingIn(settled.salt, was), left);
  }

  private void inheritMode(PipeMode mode, int left) {
    state.pipes[left].full = mode.full;
    state.pipes[left].breaks = mode.staysOpen() ? mode.breaks : 0;
  }

  private static PipeMode.Leg moving(Pipe.Leg leg) {
    return leg.negligible() ? PipeMode.Leg.BRIMFUL : PipeMode.Leg.MOVING;
  }

  /** A piece with no air in it, cut from a run that has air somewhere else. */
  private boolean isFullPiece(Pipe pipe) {
    return pipe.legs().stream().anyMatch(leg -> !leg.negligible())
        && pipe.legs().stream()
            .allMatch(leg -> leg.negligible() || state.volumes[leg.column()] >= leg.volume());
  }

  private static double standingIn(double[] amounts, Pipe pipe) {
    return pipe.legs().stream().mapToDouble(leg -> amounts[leg.column()]).sum();
  }

  private double share(Pipe was, PipeMode mode, Pipe pipe, Pipe.Leg leg, int side) {
    if (mode.full) {
      return leg.volume();
    }
    double middle =
        side == 0
            ? pipe.cutFrom() + pipe.crestAlong() / 2
            : pipe.cutFrom() + (pipe.crestAlong() + pipe.length()) / 2;
    Pipe.Leg oldLeg = was.leg(middle < was.crestAlong() ? 0 : 1);
    double level =
        before.places().get(oldLeg.column()).table().level(settled.volumes[oldLeg.column()]);
    LevelTable table = next.places().get(leg.column()).table();
    return Math.clamp(table.volume(Math.max(level, table.bottom())), 0, leg.volume());
  }

  /**
   * What cutting a leg in two misjudges stays in the run: all of it is handed on, in proportion to
   * what has been given so far.
   */
  private void shareOut(double held, double salt, List<Integer> left) {
    double given = 0;
    double room = 0;
    for (int i : left) {
      for (Pipe.Leg leg : next.pipes().get(i).legs()) {
        given += state.volumes[leg.column()];
        room += leg.volume();
      }
    }
    for (int i : left) {
      for (Pipe.Leg leg : next.pipes().get(i).legs()) {
        int column = leg.column();
        double share = given > 0 ? state.volumes[column] / given : leg.volume() / room;
        state.volumes[column] = held * share;
        state.salt[column] = salt * share;
      }
    }
  }

  /**
   * Pieces put together, or cut elsewhere: water stays along the run where it was, and what stood
   * at a hole that is mended joins it. There is air in it unless it filled every piece.
   */
  private void putTogether(String run, List<Integer> old, List<Integer> left) {
    double held = 0;
    double salt = 0;
    for (int place = 0; place < before.places().size(); place++) {
      Place what = before.places().get(place);
      boolean stoodAtHole = what.kind() == Place.Kind.TEE && what.id().equals(run) && isGone(what);
      if (stoodAtHole) {
        held += settled.volumes[place];
        salt += settled.salt[place];
      }
    }
    emptyHole(run);
    for (int i : old) {
      held += standingIn(settled.volumes, before.pipes().get(i));
      salt += standingIn(settled.salt, before.pipes().get(i));
    }
    boolean full = old.stream().allMatch(i -> settled.pipes[i].full);
    for (int i : left) {
      Pipe pipe = next.pipes().get(i);
      state.pipes[i].full = full;
      for (int side = 0; side < 2; side++) {
        Pipe.Leg leg = pipe.leg(side);
        state.pipes[i].legs[side] = moving(leg);
        state.volumes[leg.column()] = stoodAlong(old, from(pipe, side), to(pipe, side));
      }
    }
    shareOut(held, salt, left);
  }

  /** The place at a hole that is mended goes on in the books, empty. */
  private void emptyHole(String run) {
    for (int place = 0; place < next.places().size(); place++) {
      Place what = next.places().get(place);
      if (what.kind() == Place.Kind.TEE && what.id().equals(run) && isGone(what)) {
        state.volumes[place] = 0;
        state.salt[place] = 0;
      }
    }
  }

  private boolean isGone(Place what) {
    return next.tees().stream().noneMatch(tee -> tee.id().equals(what.id()));
  }

  /** Where a leg of a pipe begins and ends along its run (m). */
  private static double from(Pipe pipe, int side) {
    return pipe.cutFrom() + (side == 0 ? 0 : pipe.crestAlong());
  }

  private static double to(Pipe pipe, int side) {
    return pipe.cutFrom() + (side == 0 ? pipe.crestAlong() : pipe.length());
  }

  /** What stood between two points along a run, evenly spread over each leg (m³). */
  private double stoodAlong(List<Integer> old, double from, double to) {
    double stood = 0;
    for (int i : old) {
      Pipe pipe = before.pipes().get(i);
      for (int side = 0; side < 2; side++) {
        double length = to(pipe, side) - from(pipe, side);
        double common = Math.min(to, to(pipe, side)) - Math.max(from, from(pipe, side));
        if (length > 0 && common > 0) {
          stood += settled.volumes[pipe.leg(side).column()] * common / length;
        }
      }
    }
    return stood;
  }
}
