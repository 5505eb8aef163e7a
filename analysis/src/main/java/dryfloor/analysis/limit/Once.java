package dryfloor.analysis.limit;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that is found out when it is first wanted, by whichever thread wants it. */
final class Once<T> implements Supplier<T> {

  private final Supplier<T> how;
  private Optional<T> found = Optional.empty();

  Once(Supplier<T> how) {
    this.how = how;
  }

  @Override
  public synchronized T get() {
    T known = found.orElseGet(how);
    found = Optional.of(known);
    return known;
  }
}
