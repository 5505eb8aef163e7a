package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import java.util.List;

/**
 * A failure that wets a floor today, or has no answer, and the values of a property with which it
 * does not, while every failure that leaves all floors dry today still does.
 *
 * @param ranges lowest first, at least one
 */
public record Mend(Failure failure, List<SafeRange> ranges) {

  public Mend {
    ranges = List.copyOf(ranges);
  }
}
