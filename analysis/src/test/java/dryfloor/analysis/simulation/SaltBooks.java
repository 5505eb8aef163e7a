package dryfloor.analysis.simulation;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import java.util.List;

/** Water that is moved by hand between the places of a drawing, and the salt that goes with it. */
final class SaltBooks {

  final FlowNetwork network;
  final double[] volumes;
  final double[] salts;
  final Salt salt;

  SaltBooks(Plan plan) {
    network = FlowNetwork.of(plan.draw(), List.of());
    volumes = new double[network.places().size()];
    salts = new double[network.places().size()];
    salt = new Salt(network, salts);
  }

  /** Lets a place hold so much water (m³) of a salinity (g/kg). */
  void fill(String place, double volume, double salinity) {
    volumes[place(place)] = volume;
    salts[place(place)] = volume * salinity;
  }

  /** Water (m³) over the ways from each of these places to the next, and over no other. */
  private double[] water(double volume, String... places) {
    double[] moved = new double[network.accounts().size()];
    for (int i = 1; i < places.length; i++) {
      moved[account(places[i - 1], places[i])] = volume;
    }
    return moved;
  }

  /** Moves water (m³) in one step, from the first of these places over the others to the last. */
  void pass(double volume, String... places) {
    salt.carry(volumes, water(volume, places));
    volumes[place(places[0])] -= volume;
    volumes[place(places[places.length - 1])] += volume;
  }

  /** Salt in a place (g/kg · m³). */
  double salt(String place) {
    return salts[place(place)];
  }

  double salinity(String place) {
    return salt(place) / volumes[place(place)];
  }

  private int place(String id) {
    return network.places().stream().map(Place::id).toList().indexOf(id);
  }

  private int account(String from, String to) {
    return network
        .accounts()
        .indexOf(
            network.accounts().stream()
                .filter(account -> account.from() == place(from) && account.to() == place(to))
                .findFirst()
                .orElseThrow());
  }
}
