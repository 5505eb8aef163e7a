package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Effect.Built;
import dryfloor.model.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What a sequence changes, and when. What a failure changes at a time of its own happens so long
 * after the failure begins, unless it is over by then; what is built in lasts from its beginning to
 * its end. A circuit is without power as long as any of the failures keeps it so.
 */
final class SequenceEffects {

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final List<Effect> effects = new ArrayList<>();
  private final Outages outages = new Outages();

  private SequenceEffects() {}

  /**
   * What a sequence changes.
   *
   * @param alone what the failure with an id changes by itself
   */
  static List<Effect> of(Sequence sequence, Function<String, List<Effect>> alone) {
    SequenceEffects all = new SequenceEffects();
    List<Sequence.Event> events = sequence.events();
    for (int i = 0; i < events.size(); i++) {
      switch (events.get(i)) {
        case Sequence.Event.Begins begins -> {
          double over = end(begins.failure(), events.subList(i + 1, events.size()));
          all.add(begins, over, alone.apply(begins.failure()));
        }
        case Sequence.Event.Ends ends -> {}
        case Sequence.Event.Pours pours ->
            all.effects.add(
                new Effect.Poured(pours.vessel(), pours.volume(), pours.salinity(), pours.time()));
        case Sequence.Event.Takes takes ->
            all.effects.add(
                new Effect.Taken(takes.vessel(), takes.volume(), takes.downTo(), takes.time()));
      }
    }
    all.effects.addAll(all.outages.effects());
    if (sequence.lastTime() > 0) {
      all.effects.add(new Effect.AwayFrom(sequence.lastTime()));
    }
    return List.copyOf(all.effects);
  }

  private static double end(String failure, List<Sequence.Event> later) {
    return later.stream()
        .filter(
            event -> event instanceof Sequence.Event.Ends ends && ends.failure().equals(failure))
        .mapToDouble(Sequence.Event::time)
        .findFirst()
        .orElse(NEVER);
  }

  private void add(Sequence.Event.Begins begins, double over, List<Effect> alone) {
    double from = begins.time();
    boolean built = false;
    for (Effect effect : alone) {
      switch (effect) {
        case Effect.CircuitOff off -> outages.off(off.circuit(), from + off.time(), over);
        case Effect.CircuitOn on -> outages.on(on.circuit(), from + on.time());
        case Effect.Poured poured -> {
          if (from + poured.time() < over) {
            effects.add(
                new Effect.Poured(
                    poured.vessel(), poured.volume(), poured.salinity(), from + poured.time()));
          }
        }
        case Built what -> {
          built = true;
          effects.add(new Effect.During(from, over, what));
        }
        case Effect.Taken other -> throw noEvent(other);
        case Effect.AwayTimes other -> throw noEvent(other);
        case Effect.AwayFrom other -> throw noEvent(other);
        case Effect.During other -> throw noEvent(other);
        case Effect.News other -> throw noEvent(other);
      }
    }
    outages.close();
    // Power tells of itself, circuit by circuit.
    if (built) {
      effects.add(new Effect.News(begins.failure(), false, from));
      if (over < NEVER) {
        effects.add(new Effect.News(begins.failure(), true, over));
      }
    }
  }

  private static IllegalArgumentException noEvent(Effect effect) {
    return new IllegalArgumentException("no event of a sequence can change " + effect);
  }
}
