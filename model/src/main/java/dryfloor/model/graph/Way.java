package dryfloor.model.graph;

/** How water can get from one place to another: a directed edge of the {@link WaterGraph}. */
public sealed interface Way {

  /** Id of the element that makes the way: the run, weir, vessel or floor. */
  String id();

  /** Through a run, from its first end to its second. */
  record RunWay(String id) implements Way {}

  /** Over a weir, in the direction of normal operation. */
  record WeirWay(String id) implements Way {}

  /** Over the rim of a vessel into what it stands in. */
  record RimWay(String id) implements Way {}

  /** Over the sill of a floor. */
  record SillWay(String id) implements Way {}

  /** Whether only water that leaves its place takes this way. */
  default boolean isSpill() {
    return switch (this) {
      case RunWay run -> false;
      case WeirWay weir -> false;
      case RimWay rim -> true;
      case SillWay sill -> true;
    };
  }
}
