package dryfloor.app.view.work;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * A value that changes, and everything that it was before; no change is ever forgotten.
 *
 * @param <T> an immutable value
 */
final class History<T> {

  private final Deque<T> past = new ArrayDeque<>();
  private final Deque<T> future = new ArrayDeque<>();
  private T present;

  History(T present) {
    this.present = present;
  }

  T present() {
    return present;
  }

  void change(T next) {
    past.push(present);
    present = next;
    future.clear();
  }

  /** Takes the place of the present, as one more moment of the same change. */
  void amend(T next) {
    present = next;
    future.clear();
  }

  boolean canUndo() {
    return !past.isEmpty();
  }

  boolean canRedo() {
    return !future.isEmpty();
  }

  /** Back by one change; nothing happens at the beginning. */
  void undo() {
    if (canUndo()) {
      future.push(present);
      present = past.pop();
    }
  }

  /** Forward again by one change; nothing happens at the end. */
  void redo() {
    if (canRedo()) {
      past.push(present);
      present = future.pop();
    }
  }
}
