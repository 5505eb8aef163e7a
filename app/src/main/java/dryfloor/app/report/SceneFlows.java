package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.app.drawing.Scene;
import dryfloor.model.element.Run;
import java.util.List;
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
    return ledger.entries().stream()
        .filter(entry -> entry.volume() >= LEAST)
        .flatMap(entry -> kind(entry).map(kind -> flow(entry, kind)).stream())
        .toList();
  }

  private Scene.Flow flow(Ledger.Entry entry, Scene.Flow.Kind kind) {
    String back = kind == Scene.Flow.Kind.PIPE_BACKWARDS ? " back" : "";
    return new Scene.Flow(
        entry.path(),
        kind,
        entry.from(),
        entry.to(),
        wording.amounts().volume(entry.volume()) + back);
  }

  /** How an entry looks; what a person pours or a device gives back shows in the levels only. */
  private Optional<Scene.Flow.Kind> kind(Ledger.Entry entry) {
    return switch (entry.way()) {
      case RUN ->
          Optional.of(isBackwards(entry) ? Scene.Flow.Kind.PIPE_BACKWARDS : Scene.Flow.Kind.PIPE);
      case WEIR -> Optional.of(Scene.Flow.Kind.EDGE);
      case RIM, THROWN, BURST -> Optional.of(Scene.Flow.Kind.SPILL);
      case LEAK, PARTED ->
          Optional.of(
              run(entry.path()).isPresent() ? Scene.Flow.Kind.PIPE_SPILL : Scene.Flow.Kind.SPILL);
      case SILL -> Optional.of(Scene.Flow.Kind.SILL);
      case POURED, HELD_BY_DEVICE -> Optional.empty();
    };
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
