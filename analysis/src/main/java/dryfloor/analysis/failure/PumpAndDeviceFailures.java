package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Drawing.Fitted;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.stream.Stream;

/** Failures of pumps, circulation pumps and devices. */
final class PumpAndDeviceFailures {

  private final Drawing drawing;

  PumpAndDeviceFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> all() {
    return Stream.of(
            drawing.parts(Part.Pump.class).flatMap(this::ofPump),
            Drawing.byId(drawing.installation().circulationPumps())
                .filter(this::standsInWater)
                .<Failure>map(pump -> new Failure.CirculationPumpThrowsWaterOut(pump.id())),
            drawing.parts(Part.Device.class).flatMap(this::ofDevice))
        .flatMap(failures -> failures);
  }

  private Stream<Failure> ofPump(Fitted<Part.Pump> pump) {
    String id = pump.part().id();
    Stream.Builder<Failure> failures = Stream.builder();
    failures.add(new Failure.PumpStops(id));
    if (drawing.isSwitched(id)) {
      failures.add(new Failure.PumpRunsOn(id));
    }
    failures.add(new Failure.PumpDeliversHalf(id));
    handValvesBehind(pump.run())
        .filter(valve -> valve.opening() > 0)
        .forEach(valve -> failures.add(new Failure.PumpWorksAgainstShutValve(id, valve.id())));
    if (standsOutsideItsWater(pump) && !drawing.isDormant(pump.run())) {
      failures.add(new Failure.PumpSealLeaks(id));
    }
    return failures.build();
  }

  /** Hand valves in the pump's run and in the runs of the junction directly behind it. */
  private Stream<Part.Valve> handValvesBehind(Run run) {
    Stream<Run> behind =
        run.to() instanceof RunEnd.AtJunction junction
            ? drawing.installation().runs().stream()
                .filter(other -> !other.id().equals(run.id()))
                .filter(other -> isAt(other.from(), junction) || isAt(other.to(), junction))
            : Stream.empty();
    return Stream.concat(Stream.of(run), behind)
        .flatMap(each -> each.parts().stream())
        .filter(Part.Valve.class::isInstance)
        .map(Part.Valve.class::cast)
        .filter(valve -> valve.drive() instanceof Part.Valve.Drive.Hand)
        .sorted(Comparator.comparing(Part.Valve::id));
  }

  private static boolean isAt(RunEnd end, RunEnd.AtJunction junction) {
    return end instanceof RunEnd.AtJunction other && other.at().equals(junction.at());
  }

  /** A pump inside the vessel it draws from leaks back into it, which changes nothing. */
  private static boolean standsOutsideItsWater(Fitted<Part.Pump> pump) {
    return pump.part()
        .standsIn()
        .filter(place -> !place.equals(pump.run().from().at()))
        .isPresent();
  }

  private boolean standsInWater(CirculationPump pump) {
    return drawing.vessel(pump.vessel()).level() > pump.inlet();
  }

  private Stream<Failure> ofDevice(Fitted<Part.Device> device) {
    String id = device.part().id();
    Stream.Builder<Failure> failures = Stream.builder();
    if (new RunEffects(drawing).cupOverflows(id).isPresent()) {
      failures.add(new Failure.DeviceCupOverflows(id));
    }
    failures.add(new Failure.DeviceLidOpens(id));
    failures.add(new Failure.DeviceConnectionLetsGo(id));
    return failures.build();
  }
}
