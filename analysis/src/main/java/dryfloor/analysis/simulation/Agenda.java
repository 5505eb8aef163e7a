package dryfloor.analysis.simulation;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** What is due at known times: power cuts and returns, delays, timers. */
final class Agenda {

  /** Nobody in particular waits for this entry. */
  static final int NOBODY = -1;

  /**
   * Something due.
   *
   * @param order in which it was entered, to keep entries of one time in order
   * @param owner index of the control that waits for it, or {@link #NOBODY}
   */
  private record Entry(double time, int order, int owner, Runnable action) {}

  private final PriorityQueue<Entry> entries =
      new PriorityQueue<>(Comparator.comparingDouble(Entry::time).thenComparingInt(Entry::order));
  private final State state;
  private int entered;

  /** When the last thing happened that was due whatever the water did (s). */
  private double lastAppointment;

  Agenda(State state) {
    this.state = state;
  }

  void at(double time, Runnable action) {
    at(time, NOBODY, action);
  }

  void at(double time, int owner, Runnable action) {
    entries.add(new Entry(time, entered++, owner, action));
  }

  void after(double delay, int owner, Runnable action) {
    at(state.time + delay, owner, action);
  }

  /** Something that a control waits for and that nothing has called off yet. */
  record Waiting(double time, int owner) {}

  /** What controls wait for, in no order. */
  List<Waiting> waiting() {
    return entries.stream()
        .filter(entry -> entry.owner() != NOBODY)
        .map(entry -> new Waiting(entry.time(), entry.owner()))
        .toList();
  }

  /** Whether something is due that no control will call off or start again: power, delays. */
  boolean hasAppointment() {
    return awaits(NOBODY);
  }

  /** When the last appointment was (s); the water has been left to itself since then. */
  double lastAppointment() {
    return lastAppointment;
  }

  boolean awaits(int owner) {
    return entries.stream().anyMatch(entry -> entry.owner() == owner);
  }

  void drop(int owner) {
    entries.removeIf(entry -> entry.owner() == owner);
  }

  /** Time of the next entry (s), infinite if nothing is due any more. */
  double next() {
    Entry first = entries.peek();
    return first == null ? Double.POSITIVE_INFINITY : first.time();
  }

  /** Does everything that is due now; returns whether there was anything. */
  boolean doDue() {
    boolean any = false;
    for (Entry first = entries.peek();
        first != null && first.time() <= state.time;
        first = entries.peek()) {
      entries.poll();
      if (first.owner() == NOBODY) {
        lastAppointment = first.time();
      }
      first.action().run();
      any = true;
    }
    return any;
  }
}
