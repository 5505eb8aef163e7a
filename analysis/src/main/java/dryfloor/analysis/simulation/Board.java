package dryfloor.analysis.simulation;

import dryfloor.analysis.network.ControlUnit;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.PoweredPart;
import dryfloor.model.element.Control;
import dryfloor.model.part.Power;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which circuits live, which controls have acted, and which parts therefore run. */
final class Board {

  private final FlowNetwork network;
  private final Set<String> deadCircuits = new HashSet<>();
  private final boolean[] waitsForDelay;

  /** When the delay of each part that waits for it is over (s); endless without power. */
  private final double[] delayEnds;

  private final boolean[] staysOff;
  private final boolean[] lostPrime;
  private final boolean[] acted;
  private final boolean[] runs;
  private final double[] openings;
  private int revision;

  Board(FlowNetwork network) {
    this.network = network;
    int parts = network.parts().size();
    this.waitsForDelay = new boolean[parts];
    this.delayEnds = new double[parts];
    this.staysOff = new boolean[parts];
    this.lostPrime = new boolean[parts];
    this.runs = new boolean[parts];
    this.openings = new double[parts];
    this.acted = new boolean[network.controls().size()];
    for (int part = 0; part < parts; part++) {
      openings[part] =
          network.parts().get(part).valve().map(PoweredPart.ValvePositions::on).orElse(0.0);
    }
  }

  /** Takes over the memory of another board, for the same drawing with failures built in. */
  void inherit(Board before) {
    deadCircuits.addAll(before.deadCircuits);
    for (int part = 0; part < network.parts().size(); part++) {
      int same = before.partIndex(network.parts().get(part).id());
      waitsForDelay[part] = before.waitsForDelay[same];
      delayEnds[part] = before.delayEnds[same];
      staysOff[part] = before.staysOff[same];
      lostPrime[part] = before.lostPrime[same];
      openings[part] = before.openings[same];
      runs[part] = before.runs[same];
    }
    revision++;
    for (int control = 0; control < acted.length; control++) {
      acted[control] = before.acted[control] && !isPutRight(before, control);
    }
  }

  /** A sensor or timer that acted without cause is reset when it is put right. */
  private boolean isPutRight(Board before, int control) {
    return before.network.controls().get(control).fault() == ControlUnit.Fault.TRIPPED
        && network.controls().get(control).fault() != ControlUnit.Fault.TRIPPED;
  }

  private int partIndex(String id) {
    for (int part = 0; part < network.parts().size(); part++) {
      if (network.parts().get(part).id().equals(id)) {
        return part;
      }
    }
    throw new IllegalStateException("'" + id + "' was no powered part in normal operation");
  }

  /** Changes whenever a part starts, stops or moves. */
  int revision() {
    return revision;
  }

  boolean runs(int part) {
    return runs[part];
  }

  /** Opening of a powered valve (0 to 1). */
  double opening(int part) {
    return openings[part];
  }

  boolean hasActed(int control) {
    return acted[control];
  }

  void setActed(int control, boolean value) {
    acted[control] = value;
  }

  boolean hasPower(int part) {
    return !deadCircuits.contains(network.parts().get(part).power().circuit());
  }

  void losePrime(int part) {
    lostPrime[part] = true;
  }

  void cut(String circuit) {
    deadCircuits.add(circuit);
    for (int part = 0; part < network.parts().size(); part++) {
      Power power = network.parts().get(part).power();
      if (power.circuit().equals(circuit)) {
        staysOff[part] |= power.onReturn() == Power.OnReturn.STAYS_OFF;
        waitsForDelay[part] = power.delay() > 0;
        delayEnds[part] = Double.POSITIVE_INFINITY;
      }
    }
  }

  void restore(String circuit) {
    deadCircuits.remove(circuit);
  }

  /** Lets a part wait for its delay after power has come back. */
  void waitUntil(int part, double time) {
    delayEnds[part] = time;
  }

  /** When the delay of a part is over (s), endless if it waits for power or for nothing. */
  double waitsUntil(int part) {
    return waitsForDelay[part] ? delayEnds[part] : Double.POSITIVE_INFINITY;
  }

  /** A delay is over, unless power was lost again meanwhile and it began anew. */
  void delayIsOver(int part, double now) {
    waitsForDelay[part] &= now < delayEnds[part];
  }

  /** Whether anything asks this part to run, timers left aside. */
  boolean isCalled(int part) {
    boolean anyCaller = false;
    boolean called = false;
    for (int i = 0; i < acted.length; i++) {
      ControlUnit unit = network.controls().get(i);
      if (!unit.parts().contains(part)) {
        continue;
      }
      switch (unit.control()) {
        case Control.LevelSwitch levelSwitch -> {
          if (callsFor(levelSwitch.action())) {
            anyCaller = true;
            called |= acted[i];
          } else if (acted[i]) {
            return false;
          }
        }
        case Control.HandSwitch handSwitch -> {
          anyCaller = true;
          called |= handSwitch.on();
        }
        case Control.LeakSensor sensor -> {
          if (acted[i]) {
            return false;
          }
        }
        case Control.Timer timer -> {}
      }
    }
    return called || !anyCaller;
  }

  static boolean callsFor(Control.LevelSwitch.Action action) {
    return switch (action) {
      case FILLS, EMPTIES -> true;
      case STOPS_WHEN_HIGH, STOPS_WHEN_LOW, LOCKS_OUT_WHEN_HIGH, LOCKS_OUT_WHEN_LOW -> false;
    };
  }

  private boolean isTimedOut(int part) {
    for (int i = 0; i < acted.length; i++) {
      ControlUnit unit = network.controls().get(i);
      if (acted[i] && unit.control() instanceof Control.Timer && unit.parts().contains(part)) {
        return true;
      }
    }
    return false;
  }

  /** Works out again what runs; returns the parts that changed. */
  List<Integer> update() {
    List<Integer> changed = new ArrayList<>();
    for (int part = 0; part < runs.length; part++) {
      PoweredPart what = network.parts().get(part);
      boolean alive = hasPower(part) && !waitsForDelay[part] && !staysOff[part];
      boolean wanted = what.ignoresControls() || (isCalled(part) && !isTimedOut(part));
      boolean now = alive && wanted && !what.cannotRun() && !lostPrime[part];
      double opening = opening(part, what, alive, wanted);
      if (now != runs[part] || opening != openings[part]) {
        changed.add(part);
        revision++;
      }
      runs[part] = now;
      openings[part] = opening;
    }
    return changed;
  }

  private double opening(int part, PoweredPart what, boolean alive, boolean wanted) {
    if (what.frozen() || what.valve().isEmpty()) {
      return openings[part];
    }
    PoweredPart.ValvePositions positions = what.valve().get();
    if (alive) {
      return wanted ? positions.on() : 0;
    }
    return switch (positions.rest()) {
      case OPEN -> 1;
      case CLOSED -> 0;
      case AS_IT_IS -> openings[part];
    };
  }
}
