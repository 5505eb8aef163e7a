package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
import java.util.Set;

/** Which failures are put together. */
public enum Scope {

  /** Each hidden failure with each event about power. */
  HIDDEN_WITH_POWER,

  /** Each hidden failure with each failure that shows at once, power among them. */
  HIDDEN_WITH_ANY_EVENT,

  /** Every two failures. */
  EVERY_TWO;

  /** Whether two different failures are put together, in this order or the other. */
  boolean joins(Failure one, Failure other, Set<Failure> hidden) {
    boolean oneHidden = hidden.contains(one);
    boolean otherHidden = hidden.contains(other);
    return switch (this) {
      case HIDDEN_WITH_POWER ->
          (oneHidden && FailureTraits.isOrdinaryEvent(other))
              || (otherHidden && FailureTraits.isOrdinaryEvent(one));
      case HIDDEN_WITH_ANY_EVENT -> oneHidden != otherHidden;
      case EVERY_TWO -> true;
    };
  }
}
