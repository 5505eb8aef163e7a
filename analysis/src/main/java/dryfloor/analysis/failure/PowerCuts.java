package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Effect.CircuitOff;
import dryfloor.analysis.failure.Effect.CircuitOn;
import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What power cuts of the whole building do to its circuits; a backup carries each through. */
final class PowerCuts {

  /** Short cuts in a row: three of 30 s with 60 s of power between. Common practice. */
  private static final int FLICKERS = 3;

  private static final double FLICKER = 30;
  private static final double POWER_BETWEEN_FLICKERS = 60;

  private PowerCuts() {}

  /** Power is lost for good; each circuit goes out when its backup is used up. */
  static List<Effect> forGood(Installation drawing) {
    return circuits(drawing)
        .<Effect>map(circuit -> new CircuitOff(circuit.id(), circuit.backup()))
        .toList();
  }

  /** Power is lost from one time (s) to another. */
  static Stream<Effect> between(Installation drawing, double from, double to) {
    return circuits(drawing)
        .filter(circuit -> from + circuit.backup() < to)
        .flatMap(
            circuit ->
                Stream.of(
                    new CircuitOff(circuit.id(), from + circuit.backup()),
                    new CircuitOn(circuit.id(), to)));
  }

  /** Several brief outages; a backup is taken to be full again at each. */
  static List<Effect> flickers(Installation drawing) {
    return IntStream.range(0, FLICKERS)
        .mapToDouble(cut -> cut * (FLICKER + POWER_BETWEEN_FLICKERS))
        .boxed()
        .flatMap(start -> between(drawing, start, start + FLICKER))
        .toList();
  }

  /** Circuits without backup go out, the others stay alive as long as it takes. */
  static List<Effect> onlyBackup(Installation drawing) {
    return circuits(drawing)
        .filter(circuit -> circuit.backup() <= 0)
        .<Effect>map(circuit -> new CircuitOff(circuit.id(), 0))
        .toList();
  }

  /** Somebody switches everything off at the start and on again at a time (s). */
  static Stream<Effect> byHandUntil(Installation drawing, double on) {
    return circuits(drawing)
        .flatMap(
            circuit -> Stream.of(new CircuitOff(circuit.id(), 0), new CircuitOn(circuit.id(), on)));
  }

  private static Stream<Circuit> circuits(Installation drawing) {
    return Drawing.byId(drawing.circuits());
  }
}
