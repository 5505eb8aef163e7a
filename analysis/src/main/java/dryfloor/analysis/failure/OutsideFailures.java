package dryfloor.analysis.failure;

import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.stream.Stream;

/** Failures of vessels, and of supplies, purifiers and drains. */
final class OutsideFailures {

  private final Drawing drawing;

  OutsideFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> ofVessels() {
    return Drawing.byId(drawing.installation().vessels())
        .filter(OutsideFailures::holdsWater)
        .flatMap(
            vessel ->
                Stream.of(new Failure.SeamLeaks(vessel.id()), new Failure.WallFails(vessel.id())));
  }

  Stream<Failure> ofTheOutside() {
    return Stream.of(
            Drawing.byId(drawing.installation().supplies()).flatMap(this::of),
            drawing
                .parts(Part.Device.class)
                .filter(fitted -> fitted.part().kind() == Part.Device.Kind.PURIFIER)
                .filter(fitted -> !new Downstream(drawing).nothingShuts(fitted.run()).isEmpty())
                .<Failure>map(fitted -> new Failure.PurifierRunsOn(fitted.part().id())),
            Drawing.byId(drawing.installation().drains())
                .<Failure>map(drain -> new Failure.DrainTakesNothing(drain.id())))
        .flatMap(failures -> failures);
  }

  private static boolean holdsWater(Vessel vessel) {
    return !vessel.isBasin() && vessel.level() > vessel.bottom();
  }

  /** A supply that nothing but hands shut off has their failures; one without pressure no surge. */
  private Stream<Failure> of(Supply supply) {
    Stream.Builder<Failure> failures = Stream.builder();
    if (!new Downstream(drawing).nothingShuts(supply.id()).isEmpty()) {
      failures.add(new Failure.SupplyDoesNotShut(supply.id()));
    }
    if (supply.pressure().isPresent()) {
      failures.add(new Failure.SupplyPressureSurges(supply.id()));
    }
    return failures.build();
  }
}
