package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Power, controls, and which parts run because of them. */
final class Switching {

  private final House house;
  private final Map<String, Power> powered = new TreeMap<>();
  private final Map<String, Part.Valve.Rest> rests = new TreeMap<>();
  private final Map<String, Double> drawnOpening = new TreeMap<>();
  private final Set<String> running = new TreeSet<>();
  private final Map<String, Double> backAt = new TreeMap<>();
  private final Set<String> acting = new TreeSet<>();
  private final Map<String, Double> since = new TreeMap<>();
  private double now;

  Switching(House house) {
    this.house = house;
    for (Run run : house.drawing.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.Pump pump) {
          powered.put(pump.id(), pump.power());
        }
        if (part instanceof Part.Valve valve
            && valve.drive() instanceof Part.Valve.Drive.Powered drive) {
          powered.put(valve.id(), drive.power());
          rests.put(valve.id(), drive.rest());
          drawnOpening.put(valve.id(), valve.opening());
        }
      }
    }
    for (CirculationPump pump : house.drawing.circulationPumps()) {
      powered.put(pump.id(), pump.power());
    }
  }

  boolean runs(String part) {
    return running.contains(part);
  }

  /** Takes over how things stood before the failure. */
  void goOnFrom(Switching before) {
    acting.addAll(before.acting);
    running.addAll(before.running);
  }

  /** Moments at which power changes or a delay ends (s). */
  double nextMoment(double time) {
    double next = Double.POSITIVE_INFINITY;
    for (Effect effect : house.effects) {
      double at =
          switch (effect) {
            case Effect.CircuitOff off -> off.time();
            case Effect.CircuitOn on -> on.time();
            case Effect.Poured poured -> poured.time();
            default -> 0;
          };
      if (at > time) {
        next = Math.min(next, at);
      }
    }
    for (double at : backAt.values()) {
      if (at > time) {
        next = Math.min(next, at);
      }
    }
    for (Control control : house.drawing.controls()) {
      double delay =
          switch (control) {
            case Control.LeakSensor sensor -> sensor.delay();
            case Control.Timer timer -> timer.longestRun();
            case Control.LevelSwitch level -> 0;
            case Control.HandSwitch hand -> 0;
          };
      double at =
          since.entrySet().stream()
              .filter(e -> e.getKey().startsWith(control.id() + "/"))
              .mapToDouble(e -> e.getValue() + delay)
              .filter(t -> t > time)
              .min()
              .orElse(Double.POSITIVE_INFINITY);
      next = Math.min(next, at);
    }
    return next;
  }

  /** Lets controls act; true if any part started, stopped or a valve was switched. */
  boolean update(double time) {
    now = time;
    house.drawing.controls().forEach(this::act);
    boolean changed = false;
    for (String part : powered.keySet()) {
      boolean should = shouldRun(part);
      if (should != running.contains(part)) {
        changed = true;
        if (should) {
          running.add(part);
        } else {
          running.remove(part);
        }
      }
    }
    house.fixtures.values().forEach(this::set);
    return changed;
  }

  // Controls.

  private void act(Control control) {
    if (has(Effect.ControlDead.class, control.id(), Effect.ControlDead::control)) {
      return;
    }
    if (has(Effect.ControlTripped.class, control.id(), Effect.ControlTripped::control)) {
      acting.add(control.id());
      return;
    }
    switch (control) {
      case Control.LevelSwitch level -> feel(level);
      case Control.LeakSensor sensor -> {
        Place place = house.place(sensor.in());
        boolean wet = place.level() - place.bottom >= sensor.depth();
        after(sensor.id() + "/", wet, sensor.delay(), sensor.id());
      }
      case Control.Timer timer -> {
        boolean called =
            timer.drives().stream().anyMatch(part -> hasPower(part) && isCalled(part, timer.id()));
        if (!called) {
          acting.remove(timer.id());
        }
        after(timer.id() + "/", called, timer.longestRun(), timer.id());
      }
      case Control.HandSwitch hand -> {
        boolean on =
            house.effects(Effect.HandSwitchSet.class).stream()
                .filter(e -> e.handSwitch().equals(hand.id()))
                .findFirst()
                .map(Effect.HandSwitchSet::on)
                .orElse(hand.on());
        set(hand.id(), on);
      }
    }
  }

  private void after(String key, boolean lasts, double delay, String control) {
    if (!lasts) {
      since.remove(key);
    } else {
      since.putIfAbsent(key, now);
      if (now >= since.getOrDefault(key, now) + delay - 1e-9) {
        acting.add(control);
      }
    }
  }

  private void feel(Control.LevelSwitch level) {
    double water = house.place(level.vessel()).level();
    double lower = level.lower();
    double upper = level.upper();
    for (Effect.SwitchBand band : house.effects(Effect.SwitchBand.class)) {
      if (band.levelSwitch().equals(level.id())) {
        lower = (level.lower() + level.upper() - band.band()) / 2;
        upper = lower + band.band();
      }
    }
    boolean low = water <= lower;
    boolean high = water >= upper;
    for (Effect.SwitchHeld held : house.effects(Effect.SwitchHeld.class)) {
      if (held.levelSwitch().equals(level.id())) {
        low = held.low();
        high = !held.low();
      }
    }
    boolean actsWhenLow =
        switch (level.action()) {
          case FILLS, STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> true;
          case EMPTIES, STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> false;
        };
    if (actsWhenLow ? low : high) {
      acting.add(level.id());
    } else if ((actsWhenLow ? high : low) && !level.action().locksOut()) {
      acting.remove(level.id());
    }
  }

  private void set(String control, boolean on) {
    if (on) {
      acting.add(control);
    } else {
      acting.remove(control);
    }
  }

  // Parts.

  private boolean hasPower(String part) {
    Power power = powered.get(part);
    if (power == null) {
      return false;
    }
    boolean on = true;
    boolean wasOff = false;
    double back = 0;
    List<Effect> cuts = new ArrayList<>();
    house.effects(Effect.CircuitOff.class).stream()
        .filter(e -> e.circuit().equals(power.circuit()) && e.time() <= now + 1e-9)
        .forEach(cuts::add);
    house.effects(Effect.CircuitOn.class).stream()
        .filter(e -> e.circuit().equals(power.circuit()) && e.time() <= now + 1e-9)
        .forEach(cuts::add);
    cuts.sort((a, b) -> Double.compare(timeOf(a), timeOf(b)));
    for (Effect cut : cuts) {
      on = cut instanceof Effect.CircuitOn;
      wasOff |= !on;
      back = timeOf(cut);
    }
    if (!on || !wasOff) {
      return on;
    }
    if (power.onReturn() == Power.OnReturn.STAYS_OFF) {
      return false;
    }
    backAt.put(part, back + power.delay());
    return now >= back + power.delay() - 1e-9;
  }

  private static double timeOf(Effect effect) {
    return switch (effect) {
      case Effect.CircuitOff off -> off.time();
      case Effect.CircuitOn on -> on.time();
      default -> throw new IllegalArgumentException(effect.toString());
    };
  }

  private boolean shouldRun(String part) {
    if (!hasPower(part) || has(Effect.PumpCannotRun.class, part, Effect.PumpCannotRun::pump)) {
      return false;
    }
    if (has(Effect.IgnoresControls.class, part, Effect.IgnoresControls::part)) {
      return true;
    }
    return isCalled(part, "");
  }

  /** Whether something calls for it and nothing but (perhaps) one control stops it. */
  private boolean isCalled(String part, String exceptFor) {
    boolean callersExist = false;
    boolean called = false;
    for (Control control : house.drawing.controls()) {
      if (!control.drives().contains(part) || control.id().equals(exceptFor)) {
        continue;
      }
      boolean acts = acting.contains(control.id());
      boolean calls =
          switch (control) {
            case Control.LevelSwitch level ->
                level.action() == Control.LevelSwitch.Action.FILLS
                    || level.action() == Control.LevelSwitch.Action.EMPTIES;
            case Control.HandSwitch hand -> true;
            case Control.LeakSensor sensor -> false;
            case Control.Timer timer -> false;
          };
      if (calls) {
        callersExist = true;
        called |= acts;
      } else if (acts) {
        return false;
      }
    }
    return !callersExist || called;
  }

  private void set(Fixture fixture) {
    switch (fixture) {
      case Fixture.Pump pump -> pump.running = runs(pump.id);
      case Fixture.Valve valve -> opening(valve).ifPresent(opening -> valve.opening = opening);
      case Fixture.Check check -> {}
      case Fixture.Source source -> {}
      case Fixture.Loss loss -> {}
    }
  }

  private Optional<Double> opening(Fixture.Valve valve) {
    for (Effect.ValveHeld held : house.effects(Effect.ValveHeld.class)) {
      if (held.valve().equals(valve.id)) {
        return Optional.of(held.opening());
      }
    }
    if (has(Effect.ValveFrozen.class, valve.id, Effect.ValveFrozen::valve)) {
      return Optional.empty();
    }
    Part.Valve.Rest rest = rests.get(valve.id);
    if (rest != null) {
      double drawn = drawnOpening.getOrDefault(valve.id, 1.0);
      if (runs(valve.id)) {
        return Optional.of(drawn);
      }
      return switch (rest) {
        case OPEN -> Optional.of(drawn);
        case CLOSED -> Optional.of(0.0);
        case AS_IT_IS -> hasPower(valve.id) ? Optional.of(0.0) : Optional.empty();
      };
    }
    return house.drawing.runs().stream()
        .flatMap(run -> run.parts().stream())
        .filter(part -> part instanceof Part.FloatValve && part.id().equals(valve.id))
        .map(Part.FloatValve.class::cast)
        .findFirst()
        .map(
            f -> Math.clamp((f.closesAt() - house.place(f.vessel()).level()) / f.band(), 0.0, 1.0));
  }

  private <T extends Effect> boolean has(
      Class<T> kind, String id, java.util.function.Function<T, String> of) {
    return house.effects(kind).stream().anyMatch(e -> of.apply(e).equals(id));
  }
}
