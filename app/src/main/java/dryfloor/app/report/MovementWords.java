package dryfloor.app.report;

/** How a movement of water is spoken of. */
public final class MovementWords {

  private MovementWords() {}

  /** How the water went: "over its rim", "through the return line". */
  public static String way(Wording wording, Movement movement) {
    String path = wording.names().the(movement.path());
    return switch (movement.way()) {
      case RUN -> run(movement, path);
      case WEIR -> "over " + path;
      case RIM -> "over its rim";
      case SILL -> "over its sill";
      case LEAK -> "leak in " + path;
      case PARTED -> "where " + path + " came apart";
      case THROWN -> "thrown out";
      case POURED, TAKEN -> "by hand";
      case BURST -> "burst";
      case HELD_BY_DEVICE -> "given back by " + path;
    };
  }

  /** A run's own water, where it is not known by which end it came or went. */
  private static String run(Movement movement, String path) {
    if (movement.from().equals(movement.path())) {
      return "water that stood in it";
    }
    return movement.to().equals(movement.path()) ? "to fill it" : "through " + path;
  }
}
