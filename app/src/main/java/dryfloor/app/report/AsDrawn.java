package dryfloor.app.report;

import dryfloor.model.Installation;
import java.util.Optional;

/** Says that values which may be off were taken as they are drawn. */
public final class AsDrawn {

  private AsDrawn() {}

  /** A sentence, where the drawing gives tolerances. */
  public static Optional<String> sentence(Installation installation) {
    return installation.tolerances().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Some quantities carry a tolerance, but this is for the values as drawn: 'dryfloor bands"
                + " FILE' tells how bad and how good it can be.");
  }
}
