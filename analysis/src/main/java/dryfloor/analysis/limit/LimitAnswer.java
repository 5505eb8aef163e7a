package dryfloor.analysis.limit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is known about one property. */
public sealed interface LimitAnswer {

  Property property();

  Scale scale();

  /**
   * The safe ranges.
   *
   * @param holds ranges in which every failure that leaves all floors dry today still does, lowest
   *     first
   * @param mends failures that wet a floor today and can be mended here without harm elsewhere
   * @param mark where the water stands in normal operation when a vessel is filled to the top of
   *     today's range (elevation, m): the mark on the glass; for running levels only
   */
  record Found(
      Property property, Scale scale, List<SafeRange> holds, List<Mend> mends, OptionalDouble mark)
      implements LimitAnswer {

    public Found {
      holds = List.copyOf(holds);
      mends = List.copyOf(mends);
    }

    /** The range in which today's value lies; none where the value itself can't be tried. */
    public Optional<SafeRange> today() {
      return scale.todayIn(holds);
    }

    /** Whether no value that was looked at does any harm. */
    public boolean isUnlimited() {
      return holds.size() == 1
          && holds.getFirst().below() instanceof Decider.NotLookedAt
          && holds.getFirst().above() instanceof Decider.NotLookedAt;
    }
  }

  /**
   * A level that does not stay where it is filled to: an edge or a pipe sets it.
   *
   * @param settled level at which it settles (elevation, m)
   */
  record HeldByOthers(Property property, Scale scale, double settled) implements LimitAnswer {}

  /** It was cancelled before this was known. */
  record Cancelled(Property property, Scale scale) implements LimitAnswer {}
}
