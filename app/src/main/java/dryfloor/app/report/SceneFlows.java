package dryfloor.app.report;

import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.app.drawing.Scene;
import dryfloor.model.element.Run;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Water that went its way, or goes it at a moment, as arrows of a picture. */
final class SceneFlows {

  /** Less than this (m³) is not worth an arrow. */
  private static final double LEAST = 1e-5;

  /** A slower flow (m³/s) is not worth an arrow: three litres in an hour. */
  private static final double SLOWEST = 3e-3 / 3600;

  private final Wording wording;

  SceneFlows(Wording wording) {
    this.wording = wording;
  }

  /** One arrow for each way that carried water, with what of it changed place. */
  List<Scene.Flow> of(Ledger ledger) {
    return sums(ledger).entrySet().stream()
        .filter(drawn -> drawn.getValue()[0] >= LEAST)
        .map(drawn -> flow(drawn.getKey(), drawn.getValue()[1]))
        .toList();
  }

  /** One arrow for each way that carries water at a moment, with how much of it in a minute. */
  List<Scene.Flow> of(List<Flows.Flow> now) {
    List<Ledger.Entry> inOneSecond =
        now.stream()
            .map(
                flow ->
                    new Ledger.Entry(
                        flow.path(), flow.kind(), flow.from(), flow.to(), flow.rate(), 0))
            .toList();
    return sums(new Ledger(inOneSecond, List.of(), 1, 0)).entrySet().stream()
        .filter(drawn -> drawn.getValue()[0] >= SLOWEST)
        .map(drawn -> flow(drawn.getKey(), wording.amounts().flow(drawn.getValue()[0])))
        .toList();
  }

  private Map<Arrow, double[]> sums(Ledger ledger) {
    Map<Arrow, double[]> volumes = new LinkedHashMap<>();
    for (Movement movement : Movements.of(ledger)) {
      kind(movement)
          .ifPresent(
              kind -> {
                double[] sums =
                    volumes.computeIfAbsent(arrow(movement, kind), arrow -> new double[2]);
                sums[0] += movement.volume();
                sums[1] += movement.moved();
              });
    }
    return volumes;
  }

  /** All the water over one path in one way is one arrow. */
  private record Arrow(String path, Scene.Flow.Kind kind, String from, String to) {}

  private static Arrow arrow(Movement movement, Scene.Flow.Kind kind) {
    return switch (kind) {
      case PIPE, PIPE_BACKWARDS -> new Arrow(movement.path(), kind, "", "");
      case EDGE, SPILL, WALL, PIPE_SPILL, SILL ->
          new Arrow(movement.path(), kind, movement.from(), movement.to());
    };
  }

  /** Litres that only went round and round would drown those that were lost. */
  private Scene.Flow flow(Arrow arrow, double moved) {
    return flow(
        arrow, wording.amounts().isWorthTelling(moved) ? wording.amounts().volume(moved) : "");
  }

  private static Scene.Flow flow(Arrow arrow, String amount) {
    boolean back = arrow.kind() == Scene.Flow.Kind.PIPE_BACKWARDS && !amount.isEmpty();
    String text = amount + (back ? " back" : "");
    return new Scene.Flow(arrow.path(), arrow.kind(), arrow.from(), arrow.to(), text);
  }

  /** How a movement looks; what goes by hand, or a device gives back, shows in the levels only. */
  private Optional<Scene.Flow.Kind> kind(Movement movement) {
    return switch (movement.way()) {
      case RUN -> pipe(movement);
      case WEIR -> Optional.of(Scene.Flow.Kind.EDGE);
      case RIM, THROWN -> Optional.of(Scene.Flow.Kind.SPILL);
      case BURST -> Optional.of(Scene.Flow.Kind.WALL);
      case LEAK, PARTED ->
          Optional.of(
              run(movement.path()).isPresent() ? Scene.Flow.Kind.PIPE_SPILL : Scene.Flow.Kind.WALL);
      case SILL -> Optional.of(Scene.Flow.Kind.SILL);
      case POURED, TAKEN, HELD_BY_DEVICE -> Optional.empty();
    };
  }

  /** Water that fills a pipe is told when it leaves it. */
  private Optional<Scene.Flow.Kind> pipe(Movement movement) {
    if (movement.to().equals(movement.path())) {
      return Optional.empty();
    }
    return Optional.of(
        isBackwards(movement) ? Scene.Flow.Kind.PIPE_BACKWARDS : Scene.Flow.Kind.PIPE);
  }

  private boolean isBackwards(Movement movement) {
    return run(movement.path())
        .filter(run -> !run.from().at().equals(run.to().at()))
        .map(run -> movement.from().equals(run.to().at()) || movement.to().equals(run.from().at()))
        .orElse(false);
  }

  private Optional<Run> run(String id) {
    return wording.installation().runs().stream().filter(run -> run.id().equals(id)).findFirst();
  }
}
