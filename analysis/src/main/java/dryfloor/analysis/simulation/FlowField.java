package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Orifice;
import dryfloor.analysis.hydraulics.Weir;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The flows at one moment: from the volumes of all places, in the present modes, to the flow of
 * every account and the slope of each by the levels.
 *
 * <p>Paths and pipes between places follow from the levels at both ends. Pipes that meet at a full
 * tee are solved together by {@link TeeSolver}.
 */
final class FlowField {

  /** A device takes up or gives back its water in this time (s); common practice, from memory. */
  private static final double HOLDING_TIME = 60;

  /** Share of a device's water over which its flow fades out. */
  private static final double HOLDING_FADE = 0.02;

  final AccountEnds ends;
  private final FlowNetwork network;
  private final LevelTable[] tables;
  private final Path[] paths;
  private final State state;
  final BranchBuilder builder;
  private final TeeSolver tees;

  /** Branches in the present modes, by pipe: what {@code BranchBuilder} made of it. */
  PipeBranches[] pipes = new PipeBranches[0];

  private Branch[] alone = new Branch[0];

  /** Levels of all places (m). */
  final double[] levels;

  /** Plan areas of all places (m²). */
  final double[] areas;

  private final int[] teeOfPlace;

  /** The volumes evaluated last (m³). */
  private double[] evaluated = new double[0];

  /** Flows of all accounts (m³/s). */
  final double[] flows;

  /** What each place gains (m³/s). */
  final double[] gains;

  FlowField(FlowNetwork network, State state) {
    this.network = network;
    this.ends = new AccountEnds(network);
    this.tables = network.places().stream().map(Place::table).toArray(LevelTable[]::new);
    this.paths = network.paths().toArray(Path[]::new);
    this.state = state;
    this.builder = new BranchBuilder(network, state);
    this.tees = new TeeSolver(network, state);
    int places = network.places().size();
    levels = new double[places];
    areas = new double[places];
    gains = new double[places];
    flows = new double[network.accounts().size()];
    for (int place = 0; place < places; place++) {
      levels[place] = network.places().get(place).head();
      areas[place] = 1;
    }
    teeOfPlace = new int[places];
    Arrays.fill(teeOfPlace, -1);
    for (int tee = 0; tee < network.tees().size(); tee++) {
      teeOfPlace[network.tees().get(tee).place()] = tee;
    }
  }

  /** Heads of the tees (m). */
  void copyTeeHeads(double[] into) {
    System.arraycopy(state.teeHeads, 0, into, 0, into.length);
  }

  /** Sets the heads of full tees to where they should be after a time, for the search to begin. */
  void guessTeeHeads(double[] heads, double[] rises, double time) {
    for (int tee = 0; tee < heads.length; tee++) {
      if (state.teeFull[tee]) {
        state.teeHeads[tee] = heads[tee] + time * rises[network.tees().get(tee).place()];
      }
    }
  }

  /** The slopes being collected. */
  private Slopes slopes = new Slopes();

  /** Makes the branches anew after modes have changed. */
  void rewire() {
    pipes = builder.build();
    List<Branch> all = new ArrayList<>();
    for (PipeBranches branches : pipes) {
      all.addAll(branches.all());
    }
    all.addAll(builder.holes());
    alone = all.stream().filter(branch -> !touchesFullTee(branch)).toArray(Branch[]::new);
    tees.take(all.stream().filter(FlowField::touchesFullTee).toList());
  }

  private static boolean touchesFullTee(Branch branch) {
    return branch.ends[0] instanceof BranchEnd.AtTee || branch.ends[1] instanceof BranchEnd.AtTee;
  }

  /** Works out levels, flows and gains. */
  void evaluate(double[] volumes) {
    evaluate(volumes, false);
  }

  /** Works out levels, flows and gains, and how the flows answer to the levels. */
  void evaluate(double[] volumes, Slopes into) {
    slopes = into;
    slopes.clear();
    evaluate(volumes, true);
  }

  private void evaluate(double[] volumes, boolean withSlopes) {
    readLevels(volumes);
    Arrays.fill(flows, 0);
    for (Path path : paths) {
      follow(path, withSlopes);
    }
    for (Branch branch : alone) {
      branch.solve(head(branch.ends[0]), head(branch.ends[1]), levels);
      flows[branch.slot] += branch.sign * branch.flow;
      if (withSlopes) {
        addSlopes(branch);
      }
    }
    tees.solve(this, withSlopes);
    Arrays.fill(gains, 0);
    ends.move(flows, gains);
  }

  /** Water in a place as it was evaluated last (m³). */
  double volume(int place) {
    return evaluated[place];
  }

  private void readLevels(double[] volumes) {
    evaluated = volumes;
    for (int place = 0; place < levels.length; place++) {
      if (ends.pool[place]) {
        LevelTable table = tables[place];
        int slice = table.slice(volumes[place]);
        levels[place] = table.level(slice, volumes[place]);
        areas[place] = table.area(slice);
      }
    }
  }

  /** Whether a place is a tee full of water, which gives and takes without a level of its own. */
  boolean isFullTee(int place) {
    return teeOfPlace[place] >= 0 && state.teeFull[teeOfPlace[place]];
  }

  /** Head at an end of a branch (m). */
  double head(BranchEnd end) {
    return end.head(levels, state.teeHeads);
  }

  /** Takes down how the flow of a branch answers to the levels, and to the heads of full tees. */
  void addSlopes(Branch branch) {
    addSlope(branch, 0, branch.flowPerHead);
    addSlope(branch, 1, -branch.flowPerHead);
    if (branch.actingPlace >= 0) {
      slopes.add(branch.slot, branch.actingPlace, branch.sign * branch.flowPerLevel);
    }
  }

  private void addSlope(Branch branch, int end, double value) {
    int place = movingPlace(branch.ends[end]);
    if (place >= 0) {
      slopes.add(branch.slot, place, branch.sign * value);
    }
  }

  /** The place whose level is the head at this end, or the full tee, or -1 if none is. */
  private int movingPlace(BranchEnd end) {
    return switch (end) {
      case BranchEnd.AtPlace at -> levels[at.place()] > at.elevation() ? at.place() : -1;
      case BranchEnd.AtTee at -> network.tees().get(at.tee()).place();
      case BranchEnd.AtHead at -> -1;
    };
  }

  private void follow(Path path, boolean withSlopes) {
    switch (path) {
      case Path.Edge edge -> passEdge(edge, withSlopes);
      case Path.Hole hole -> passHole(hole, withSlopes);
      case Path.PipeHole hole -> passPipeHole(hole, withSlopes);
      case Path.Thrown thrown -> throwOut(thrown, withSlopes);
      case Path.Held held -> hold(held, withSlopes);
    }
  }

  private void passEdge(Path.Edge edge, boolean withSlopes) {
    double from = levels[edge.from()] - edge.crest();
    double to = levels[edge.to()] - edge.crest();
    if (from <= 0 && to <= 0) {
      return;
    }
    boolean forward = from >= to;
    double high = forward ? from : to;
    double low = Math.max(forward ? to : from, 0);
    double height = forward ? edge.heightFrom() : edge.heightTo();
    double sign = forward ? 1 : -1;
    flows[edge.slot()] += sign * Weir.drownedFlow(high, low, edge.length(), height);
    if (withSlopes) {
      int upstream = forward ? edge.from() : edge.to();
      int downstream = forward ? edge.to() : edge.from();
      slopes.add(
          edge.slot(),
          upstream,
          sign * Weir.drownedFlowPerUpstreamHead(high, low, edge.length(), height));
      if (low > 0) {
        slopes.add(
            edge.slot(),
            downstream,
            sign * Weir.drownedFlowPerDownstreamHead(high, low, edge.length(), height));
      }
    }
  }

  private void passHole(Path.Hole hole, boolean withSlopes) {
    double from = Math.max(levels[hole.from()], hole.elevation());
    double to = Math.max(levels[hole.to()], hole.elevation());
    flows[hole.slot()] += Orifice.flow(Orifice.CRACK, hole.area(), from - to);
    if (withSlopes) {
      double slope = Orifice.flowPerHead(Orifice.CRACK, hole.area(), from - to);
      if (from > hole.elevation()) {
        slopes.add(hole.slot(), hole.from(), slope);
      }
      if (to > hole.elevation()) {
        slopes.add(hole.slot(), hole.to(), -slope);
      }
    }
  }

  /** The hole of a leaking run whose tee has drained; a full tee's hole is a branch. */
  private void passPipeHole(Path.PipeHole hole, boolean withSlopes) {
    double depth = levels[hole.from()] - hole.elevation();
    if (state.teeFull[hole.junction()] || depth <= 0) {
      return;
    }
    flows[hole.slot()] += Orifice.flow(Orifice.CRACK, hole.area(), depth);
    if (withSlopes) {
      slopes.add(hole.slot(), hole.from(), Orifice.flowPerHead(Orifice.CRACK, hole.area(), depth));
    }
  }

  private void throwOut(Path.Thrown thrown, boolean withSlopes) {
    if (!state.board.runs(thrown.part())) {
      return;
    }
    double depth = levels[thrown.from()] - thrown.downTo();
    flows[thrown.slot()] += thrown.flow() * InletDepths.IN_VESSEL.share(depth);
    if (withSlopes) {
      slopes.add(
          thrown.slot(), thrown.from(), thrown.flow() * InletDepths.IN_VESSEL.sharePerDepth(depth));
    }
  }

  /**
   * A device is full while its pump runs and finds water; as the pump's inlet is bared it gives its
   * water back.
   */
  private void hold(Path.Held held, boolean withSlopes) {
    double filled = levels[held.to()];
    double toFill = Math.clamp((1 - filled) / HOLDING_FADE, -1, 1);
    double toEmpty = Math.clamp(filled / HOLDING_FADE, -1, 1);
    double fed = 0;
    double fedPerDepth = 0;
    if (held.isFed() && state.board.runs(held.part())) {
      double bottom = network.places().get(held.from()).table().bottom();
      InletDepths depths = InletDepths.at(held.inlet(), bottom, held.bore());
      double depth = levels[held.from()] - held.inlet().elevation();
      fed = 1 - depths.fallsBack(depth);
      fedPerDepth = -depths.fallsBackPerDepth(depth);
    }
    double rate = held.holds() / HOLDING_TIME;
    flows[held.slot()] += rate * (fed * toFill - (1 - fed) * toEmpty);
    if (withSlopes) {
      double fade = (Math.abs(toFill) < 1 ? fed : 0) + (Math.abs(toEmpty) < 1 ? 1 - fed : 0);
      slopes.add(held.slot(), held.to(), -rate * fade / HOLDING_FADE);
      if (fedPerDepth > 0) {
        slopes.add(held.slot(), held.from(), rate * fedPerDepth * (toFill + toEmpty));
      }
    }
  }
}
