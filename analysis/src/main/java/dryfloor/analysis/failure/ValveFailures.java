package dryfloor.analysis.failure;

import dryfloor.model.element.Control;
import dryfloor.model.part.Part;
import java.util.stream.Stream;

/** Failures of check valves, siphon breaks, valves and level controls. */
final class ValveFailures {

  private final Drawing drawing;

  ValveFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> all() {
    return Stream.of(
            drawing.parts(Part.CheckValve.class).flatMap(fitted -> of(fitted.part())),
            drawing
                .parts(Part.SiphonBreak.class)
                .<Failure>map(fitted -> new Failure.SiphonBreakBlocked(fitted.part().id())),
            drawing.parts(Part.Valve.class).flatMap(fitted -> of(fitted.part())),
            drawing.parts(Part.FloatValve.class).flatMap(fitted -> of(fitted.part())),
            Drawing.byId(drawing.installation().controls())
                .filter(Control.LevelSwitch.class::isInstance)
                .map(Control.LevelSwitch.class::cast)
                .flatMap(ValveFailures::of))
        .flatMap(failures -> failures);
  }

  private static Stream<Failure> of(Part.CheckValve valve) {
    return Stream.of(
        new Failure.CheckValveDoesNotClose(valve.id()),
        new Failure.CheckValveLeaksBack(valve.id()),
        new Failure.CheckValveStuckShut(valve.id()));
  }

  private static Stream<Failure> of(Part.Valve valve) {
    return switch (valve.drive()) {
      case Part.Valve.Drive.Hand hand -> ofHandValve(valve, hand.use());
      case Part.Valve.Drive.Powered powered -> ofPoweredValve(valve, powered.rest());
    };
  }

  /** A valve that a person opens to fill or empty is left open; the same is not listed twice. */
  private static Stream<Failure> ofHandValve(Part.Valve valve, Part.Valve.Use use) {
    boolean leftOpenByAPerson =
        switch (use) {
          case FILL -> true;
          case EMPTY -> true;
          case TRIM -> false;
          case ISOLATE -> false;
        };
    Stream.Builder<Failure> failures = Stream.builder();
    if (valve.opening() < 1 && !leftOpenByAPerson) {
      failures.add(new Failure.ValveFoundOpen(valve.id()));
    }
    if (valve.opening() > 0) {
      failures.add(new Failure.ValveFoundShut(valve.id()));
    }
    return failures.build();
  }

  private static Stream<Failure> ofPoweredValve(Part.Valve valve, Part.Valve.Rest rest) {
    Stream<Failure> stuck =
        Stream.of(
            new Failure.PoweredValveStuckOpen(valve.id()),
            new Failure.PoweredValveStuckShut(valve.id()));
    Stream<Failure> notAtRest =
        switch (rest) {
          case OPEN -> Stream.of(new Failure.PoweredValveDoesNotRest(valve.id()));
          case CLOSED -> Stream.of(new Failure.PoweredValveDoesNotRest(valve.id()));
          case AS_IT_IS -> Stream.empty();
        };
    return Stream.concat(stuck, notAtRest);
  }

  /** Chatter of a float valve hammers the pipe but moves no level, so it is not listed. */
  private static Stream<Failure> of(Part.FloatValve valve) {
    return Stream.of(
        new Failure.FloatValveStuckOpen(valve.id()), new Failure.FloatValveStuckShut(valve.id()));
  }

  /** What locks out acts once and cannot chatter. */
  private static Stream<Failure> of(Control.LevelSwitch levelSwitch) {
    String id = levelSwitch.id();
    Stream<Failure> stuck =
        Stream.of(new Failure.LevelSwitchStuckLow(id), new Failure.LevelSwitchStuckHigh(id));
    return levelSwitch.action().locksOut()
        ? stuck
        : Stream.concat(stuck, Stream.of(new Failure.LevelSwitchChatters(id)));
  }
}
