package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Note;
import dryfloor.model.element.Vessel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Sees which vessels would float at any moment: one that is flooded over its rim later was lifted
 * before that.
 *
 * <p>Archimedes: the water that a vessel displaces against its own mass and what it holds.
 */
final class Afloat {

  private record Light(Vessel vessel, double mass, int own, int around) {}

  private final State state;
  private final FlowField field;
  private final double density;
  private final List<Light> light;
  private final Set<String> floated = new TreeSet<>();

  Afloat(FlowNetwork network, State state, FlowField field) {
    this.state = state;
    this.field = field;
    this.density = network.water().density();
    Map<String, Integer> places = new HashMap<>();
    for (int place = 0; place < network.places().size(); place++) {
      places.put(network.places().get(place).id(), place);
    }
    this.light =
        network.installation().vessels().stream()
            .filter(vessel -> vessel.emptyMass().isPresent())
            .map(
                vessel ->
                    new Light(
                        vessel,
                        vessel.emptyMass().getAsDouble(),
                        places.getOrDefault(vessel.id(), -1),
                        places.getOrDefault(vessel.standsIn(), -1)))
            .filter(vessel -> vessel.own() >= 0 && vessel.around() >= 0)
            .toList();
  }

  /** Takes over what floated in an earlier stage. */
  void goOn(Afloat before) {
    floated.addAll(before.floated);
  }

  /** Looks round after a step. */
  void look() {
    for (Light vessel : light) {
      if (lifted(vessel) > vessel.mass() + state.volumes[vessel.own()] * density) {
        floated.add(vessel.vessel().id());
      }
    }
  }

  /** Mass of the water that it displaces (kg). */
  private double lifted(Light light) {
    Vessel vessel = light.vessel();
    double depth = field.levels[light.around()] - vessel.bottom();
    return depth <= 0
        ? 0
        : vessel.shape().volumeBelow(Math.min(depth, vessel.shape().height())) * density;
  }

  List<Note> notes() {
    return floated.stream().<Note>map(Note.MayFloat::new).toList();
  }
}
