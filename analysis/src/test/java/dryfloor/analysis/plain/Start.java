package dryfloor.analysis.plain;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** How things stand before the first step. */
final class Start {

  private final House house;
  private final Water water;

  Start(House house, Water water) {
    this.house = house;
    this.water = water;
  }

  /** As drawn, all at rest. */
  void begin() {
    house.switching.update(0);
    Set<Pipe> fed = fed();
    for (Pipe pipe : house.pipes) {
      boolean covered = pipe.from.level() > pipe.crest && pipe.to.level() > pipe.crest;
      pipe.full = covered || (!pipe.vented && (brings(pipe) || fed.contains(pipe)));
      pipe.full |= !pipe.vented && !pipe.blocked && isShutByItsPump(pipe);
    }
    for (int i = 0; i < 5; i++) {
      house.tees.values().forEach(tee -> tee.balance(1));
      house.pipes.forEach(Pipe::standStill);
    }
    house.pipes.stream()
        .filter(pipe -> !pipe.full && !pipe.vented && pipe.holdsWhatItsPumpLifted())
        .forEach(pipe -> pipe.inA = pipe.legA.volume());
    for (Held device : water.held) {
      device.inside = device.isFed() ? device.capacity : 0;
    }
  }

  /** Whether water comes through it: one that draws from below the surface, or has a pump. */
  private static boolean brings(Pipe pipe) {
    return pipe.whole.pumps() || pipe.from.level() > pipe.crest + pipe.bore;
  }

  /** Whether a pump that is shut while it stands still has filled it before. */
  private static boolean isShutByItsPump(Pipe pipe) {
    return pipe.whole.fixtures.stream()
        .anyMatch(f -> f instanceof Fixture.Pump && f.blocksForward() && f.blocksBackward());
  }

  /** Pipes that begin at a tee which others bring water to, one after another. */
  private Set<Pipe> fed() {
    Set<Pipe> fed = new HashSet<>();
    for (int i = 0; i < house.tees.size(); i++) {
      for (Tee tee : house.tees.values()) {
        boolean isFed =
            tee.pipes.stream()
                .anyMatch(
                    pipe ->
                        pipe.to.node() == tee
                            && (fed.contains(pipe) || (!pipe.vented && brings(pipe))));
        tee.pipes.stream()
            .filter(pipe -> isFed && pipe.from.node() == tee && !pipe.vented)
            .forEach(fed::add);
      }
    }
    return fed;
  }

  /** Where normal operation has settled. */
  void goOnFrom(House normal, Water waterThen) {
    house.places.forEach((id, place) -> place.volume = normal.place(id).volume);
    house.switching.goOnFrom(normal.switching);
    house.fixtures.forEach(
        (id, fixture) ->
            Optional.ofNullable(normal.fixtures.get(id))
                .ifPresent(before -> goOn(fixture, before)));
    for (Pipe pipe : house.pipes) {
      Pipe before = pipe(normal, pipe.run);
      pipe.full = before.full;
      if (!pipe.full && isWhole(pipe)) {
        pipe.inA = Math.min(before.holds(), pipe.legA.volume());
        pipe.inB = Math.min(before.holds() - pipe.inA, pipe.legB.volume());
        if (Math.abs(pipe.legA.volume() - before.legA.volume()) < 1e-9) {
          pipe.inA = before.inA;
          pipe.inB = before.inB;
        }
      } else {
        pipe.standStill();
      }
    }
    for (int i = 0; i < water.held.size(); i++) {
      water.held.get(i).inside = waterThen.held.get(i).inside;
    }
  }

  private static void goOn(Fixture fixture, Fixture before) {
    if (fixture instanceof Fixture.Valve valve && before instanceof Fixture.Valve was) {
      valve.opening = was.opening;
    }
  }

  private boolean isWhole(Pipe pipe) {
    return house.pipes.stream().filter(other -> other.run.equals(pipe.run)).count() == 1;
  }

  private static Pipe pipe(House normal, String run) {
    return normal.pipes.stream().filter(pipe -> pipe.run.equals(run)).findFirst().orElseThrow();
  }
}
