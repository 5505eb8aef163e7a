package dryfloor.analysis.failure;

import dryfloor.model.FailureSettings.Skipped;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which failures an installation can have. Each component brings its own; only those that make
 * sense for the drawing are listed.
 *
 * <p>The order is power first, then kind by kind, by id within a kind: it does not depend on the
 * order of the file. Failures that the user has switched off are in the list all the same.
 */
public final class FailureCatalogue {

  private FailureCatalogue() {}

  /** Every failure that the drawing can have, in stable order; sequences of them at the end. */
  public static List<Failure> of(Installation installation) {
    return Stream.concat(single(installation), EventFailures.sequences(installation)).toList();
  }

  /** Every failure that is not made of others. */
  static Stream<Failure> single(Installation installation) {
    Drawing drawing = new Drawing(installation);
    ClogFailures clogs = new ClogFailures(drawing);
    OutsideFailures outside = new OutsideFailures(drawing);
    ControlAndPersonFailures others = new ControlAndPersonFailures(drawing);
    return Stream.of(
            PowerFailures.of(installation),
            new PumpAndDeviceFailures(drawing).all(),
            new ValveFailures(drawing).all(),
            new RunFailures(drawing).all(),
            clogs.all(),
            outside.ofVessels(),
            clogs.basinDrains(),
            outside.ofTheOutside(),
            others.ofSensorsAndTimers(),
            others.ofPeople())
        .flatMap(failures -> failures);
  }

  /** The failure with this id, if the drawing can have it. */
  public static Optional<Failure> find(Installation installation, String id) {
    return of(installation).stream()
        .filter(failure -> FailureNames.id(failure).equals(id))
        .findFirst();
  }

  /** What the file switches off although the drawing can't have it: a slip or a leftover. */
  public static List<Skipped> unknownSkips(Installation installation) {
    Set<String> known = of(installation).stream().map(FailureNames::id).collect(Collectors.toSet());
    return installation.failureSettings().skipped().stream()
        .filter(skipped -> !known.contains(skipped.failure()))
        .toList();
  }
}
