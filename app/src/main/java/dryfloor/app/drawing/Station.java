package dryfloor.app.drawing;

import java.util.List;

/**
 * What takes up room of its own along a storey: vessels that stand together, or a single end of a
 * pipe.
 *
 * @param key unique among stations
 * @param storey id of the storey that it is on
 * @param room id of the floor that it stands on
 * @param ids of the vessels, junction, supply or drain in it
 * @param width that it takes (m), without the pipes beside it
 * @param margin room for the pipes on each side (m)
 */
record Station(
    String key, String storey, String room, List<String> ids, double width, double margin) {

  Station {
    ids = List.copyOf(ids);
  }

  double span() {
    return width + 2 * margin;
  }
}
