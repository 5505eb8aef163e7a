package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.app.drawing.Scene;
import dryfloor.model.element.Run;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The ledger as arrows of a picture. */
final class SceneFlows {

  /** Less than this (m³) is not worth an arrow. */
  private static final double LEAST = 1e-5;

  private final Wording wording;

  SceneFlows(Wording wording) {
    this.wording = wording;
  }

  List<Scene.Flow> of(Ledger ledger) {
    Map<Arrow, Double> volumes = new LinkedHashMap<>();
    for (Ledger.Entry entry : ledger.entries()) {
      kind(entry).ifPresent(kind -> volumes.merge(arrow(entry, kind), entry.volume(), Double::sum));
    }
    return volumes.entrySet().stream()
        .filter(drawn -> drawn.getValue() >= LEAST)
        .map(drawn -> flow(drawn.getKey(), drawn.getValue()))
        .toList();
  }

  /** All the water over one path in one way is one arrow. */
  private record Arrow(String path, Scene.Flow.Kind kind, String from, String to) {}

  private static Arrow arrow(Ledger.Entry entry, Scene.Flow.Kind kind) {
    return switch (kind) {
      case PIPE, PIPE_BACKWARDS -> new Arrow(entry.path(), kind, "", "");
      case EDGE, SPILL, PIPE_SPILL, SILL -> new Arrow(entry.path(), kind, entry.from(), entry.to());
    };
  }

  private Scene.Flow flow(Arrow arrow, double volume) {
    String back = arrow.kind() == Scene.Flow.Kind.PIPE_BACKWARDS ? " back" : "";
    return new Scene.Flow(
        arrow.path(),
        arrow.kind(),
        arrow.from(),
        arrow.to(),
        wording.amounts().volume(volume) + back);
  }

  /** How an entry looks; what a person pours or a device gives back shows in the levels only. */
  private Optional<Scene.Flow.Kind> kind(Ledger.Entry entry) {
    return switch (entry.way()) {
      case RUN -> pipe(entry);
      case WEIR -> Optional.of(Scene.Flow.Kind.EDGE);
      case RIM, THROWN, BURST -> Optional.of(Scene.Flow.Kind.SPILL);
      case LEAK, PARTED ->
          Optional.of(
              run(entry.path()).isPresent() ? Scene.Flow.Kind.PIPE_SPILL : Scene.Flow.Kind.SPILL);
      case SILL -> Optional.of(Scene.Flow.Kind.SILL);
      case POURED, HELD_BY_DEVICE -> Optional.empty();
    };
  }

  /** Water that fills a pipe is told when it leaves it. */
  private Optional<Scene.Flow.Kind> pipe(Ledger.Entry entry) {
    if (entry.to().equals(entry.path())) {
      return Optional.empty();
    }
    return Optional.of(isBackwards(entry) ? Scene.Flow.Kind.PIPE_BACKWARDS : Scene.Flow.Kind.PIPE);
  }

  private boolean isBackwards(Ledger.Entry entry) {
    return run(entry.path())
        .filter(run -> !run.from().at().equals(run.to().at()))
        .map(run -> entry.from().equals(run.to().at()) || entry.to().equals(run.from().at()))
        .orElse(false);
  }

  private Optional<Run> run(String id) {
    return wording.installation().runs().stream().filter(run -> run.id().equals(id)).findFirst();
  }
}
