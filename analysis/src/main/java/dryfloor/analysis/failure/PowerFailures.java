package dryfloor.analysis.failure;

import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import java.util.List;
import java.util.stream.Stream;

/** The power failures of a drawing, as far as it has circuits for them. */
final class PowerFailures {

  private PowerFailures() {}

  static Stream<Failure> of(Installation drawing) {
    if (drawing.circuits().isEmpty()) {
      return Stream.empty();
    }
    boolean severalCircuits = drawing.circuits().size() > 1;
    return Stream.of(
            Stream.of(new Failure.BuildingLosesPower()),
            ifAnything(
                new Failure.BuildingLosesPowerForAWhile(),
                PowerCuts.between(drawing, 0, drawing.failureSettings().outage()).toList()),
            ifAnything(new Failure.PowerFlickers(), PowerCuts.flickers(drawing)),
            onlyBackup(drawing),
            severalCircuits
                ? Drawing.byId(drawing.circuits()).flatMap(PowerFailures::trips)
                : Stream.<Failure>empty())
        .flatMap(failures -> failures);
  }

  private static Stream<Failure> onlyBackup(Installation drawing) {
    boolean anyBackup = drawing.circuits().stream().anyMatch(circuit -> circuit.backup() > 0);
    return anyBackup
        ? ifAnything(new Failure.OnlyBackupRuns(), PowerCuts.onlyBackup(drawing))
        : Stream.empty();
  }

  private static Stream<Failure> trips(Circuit circuit) {
    return Stream.of(
        new Failure.CircuitTrips(circuit.id()), new Failure.CircuitTripsForAWhile(circuit.id()));
  }

  /** A cut that every circuit's backup bridges is none. */
  private static Stream<Failure> ifAnything(Failure failure, List<Effect> effects) {
    return effects.isEmpty() ? Stream.empty() : Stream.of(failure);
  }
}
