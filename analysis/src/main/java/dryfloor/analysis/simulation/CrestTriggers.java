package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import java.util.List;

/**
 * When an edge or a hole is drowned from both sides, and when it is no longer.
 *
 * <p>While it is drowned, the two waters hang together so closely that long steps are taken for
 * both as one. The side that falls dry must not be taken along below the edge: its step ends there.
 */
final class CrestTriggers {

  /** An edge counts as drowned again with this much water over it (m). */
  private static final double AGAIN = 1e-5;

  /** Drowning of an edge over which water leaves the drawing, and of what is no edge (m). */
  private static final double NEVER = -1e6;

  private final FlowNetwork network;
  private final FlowField field;

  CrestTriggers(FlowNetwork network, FlowField field) {
    this.network = network;
    this.field = field;
  }

  /** Nothing switches at these moments; the flows only follow another branch of their law. */
  void addTo(List<Trigger> triggers) {
    for (Path path : network.paths()) {
      if (drowning(path) > 0) {
        triggers.add(
            new Trigger(name(path) + " is drowned no more", () -> drowning(path), () -> {}));
      } else if (drowning(path) > NEVER) {
        triggers.add(
            new Trigger(name(path) + " is drowned", () -> AGAIN - drowning(path), () -> {}));
      }
    }
  }

  /** Whether each path is drowned, as part of the modes that a cycle repeats. */
  void tellModes(StringBuilder modes) {
    for (Path path : network.paths()) {
      modes.append(drowning(path) > 0 ? 'd' : '-');
    }
  }

  /** Water over the edge or hole on its lower side (m). */
  private double drowning(Path path) {
    return switch (path) {
      case Path.Edge edge -> lowerSide(edge) - edge.crest();
      case Path.Hole hole -> lowerSide(hole) - hole.elevation();
      case Path.Thrown thrown -> NEVER;
      case Path.Held held -> NEVER;
      case Path.PipeHole hole -> NEVER;
    };
  }

  private String name(Path path) {
    return "the edge of " + network.accounts().get(path.slot()).path();
  }

  private double lowerSide(Path path) {
    return Math.min(field.levels[path.from()], field.levels[path.to()]);
  }
}
