package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.Locale;

/** When and where most goes on, for the reason why there is no answer. */
final class Whereabouts {

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;

  Whereabouts(FlowNetwork network, State state, FlowField field) {
    this.network = network;
    this.state = state;
    this.field = field;
  }

  String now() {
    int fastest = 0;
    for (int place = 0; place < field.gains.length; place++) {
      if (network.places().get(place).kind().isPool() && speed(place) > speed(fastest)) {
        fastest = place;
      }
    }
    return String.format(
        Locale.ROOT,
        "at %.3f s, with most going on in '%s'",
        state.time,
        network.places().get(fastest).id());
  }

  private double speed(int place) {
    return Math.abs(field.gains[place]) / field.areas[place];
  }
}
