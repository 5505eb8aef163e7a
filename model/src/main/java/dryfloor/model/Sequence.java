package dryfloor.model;

import java.util.List;

/**
 * Things that happen one after the other, written down by the user and run like a failure: fouled
 * teeth for days, then a power cut.
 *
 * @param id of the sequence, unique among the sequences of the drawing
 * @param name what people call it
 * @param events in the order of their times; at least one
 */
public record Sequence(String id, String name, List<Event> events) {

  public Sequence {
    events = List.copyOf(events);
  }

  /** When the last event is (s after the beginning); zero if there is none. */
  public double lastTime() {
    return events.isEmpty() ? 0 : events.getLast().time();
  }

  /** One thing that happens at a time. */
  public sealed interface Event {

    /** Seconds after the beginning of the sequence. */
    double time();

    /**
     * A failure begins. Power lost, a valve or switch set by hand are failures too.
     *
     * @param failure its id, as the list of failures has it
     */
    record Begins(double time, String failure) implements Event {}

    /**
     * A failure that has begun is over: it is mended, power is back, the valve stands as drawn.
     *
     * @param failure its id
     */
    record Ends(double time, String failure) implements Event {}

    /**
     * Somebody pours water in.
     *
     * @param vessel id of the vessel
     * @param volume of the water (m³)
     * @param salinity of the water (g/kg)
     */
    record Pours(double time, String vessel, double volume, double salinity) implements Event {}

    /**
     * Somebody takes water out, by bucket or hose, and away from the installation.
     *
     * @param vessel id of the vessel
     * @param volume that is meant to be taken (m³); what can't be reached stays
     * @param downTo above the vessel's bottom, how far the bucket or the inlet of the hose reaches
     *     down (m)
     */
    record Takes(double time, String vessel, double volume, double downTo) implements Event {}
  }
}
