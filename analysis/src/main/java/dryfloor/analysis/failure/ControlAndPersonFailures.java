package dryfloor.analysis.failure;

import dryfloor.model.FailureSettings.HandTopUp;
import dryfloor.model.element.Control;
import dryfloor.model.part.Part;
import java.util.stream.Stream;

/** Failures of leak sensors and timers, and of the people who look after the installation. */
final class ControlAndPersonFailures {

  private final Drawing drawing;

  ControlAndPersonFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> ofSensorsAndTimers() {
    return controls().flatMap(this::ofGuard);
  }

  Stream<Failure> ofPeople() {
    return Stream.of(
            controls().flatMap(this::ofSwitch),
            drawing
                .parts(Part.Valve.class)
                .filter(fitted -> canBeLeftOpen(fitted.part()))
                .<Failure>map(fitted -> new Failure.ValveLeftOpen(fitted.part().id())),
            drawing.installation().failureSettings().topUps().stream()
                .map(HandTopUp::vessel)
                .distinct()
                .sorted()
                .<Failure>map(Failure.ToppedUpWhileStopped::new),
            nobodyComesBack())
        .flatMap(failures -> failures);
  }

  private Stream<Control> controls() {
    return Drawing.byId(drawing.installation().controls());
  }

  /** A guard that switches nothing can be dead, but acts falsely without any harm to the water. */
  private Stream<Failure> ofGuard(Control control) {
    Stream<Failure> both =
        switch (control) {
          case Control.LeakSensor sensor ->
              Stream.of(
                  new Failure.LeakSensorDoesNotAct(sensor.id()),
                  new Failure.LeakSensorActsFalsely(sensor.id()));
          case Control.Timer timer ->
              Stream.of(
                  new Failure.TimerDoesNotAct(timer.id()),
                  new Failure.TimerActsFalsely(timer.id()));
          case Control.LevelSwitch levelSwitch -> Stream.empty();
          case Control.HandSwitch handSwitch -> Stream.empty();
        };
    return control.drives().isEmpty() ? both.limit(1) : both;
  }

  private Stream<Failure> ofSwitch(Control control) {
    return switch (control) {
      case Control.HandSwitch handSwitch ->
          Stream.of(
              handSwitch.on()
                  ? new Failure.SwitchLeftOff(handSwitch.id())
                  : new Failure.SwitchLeftOn(handSwitch.id()));
      case Control.LevelSwitch levelSwitch -> Stream.empty();
      case Control.LeakSensor sensor -> Stream.empty();
      case Control.Timer timer -> Stream.empty();
    };
  }

  private static boolean canBeLeftOpen(Part.Valve valve) {
    return valve.opening() < 1
        && switch (valve.drive()) {
          case Part.Valve.Drive.Powered powered -> false;
          case Part.Valve.Drive.Hand hand ->
              switch (hand.use()) {
                case FILL -> true;
                case EMPTY -> true;
                case TRIM -> false;
                case ISOLATE -> false;
              };
        };
  }

  /** Longer away matters only where water keeps coming or something was left on. */
  private Stream<Failure> nobodyComesBack() {
    boolean somethingGoesOn =
        !drawing.installation().supplies().isEmpty()
            || drawing.installation().controls().stream()
                .anyMatch(control -> control instanceof Control.HandSwitch hand && hand.on());
    return somethingGoesOn ? Stream.of(new Failure.NobodyComesBack()) : Stream.empty();
  }
}
