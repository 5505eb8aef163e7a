package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.jspecify.annotations.Nullable;

/**
 * Which station stands where along its storey: near what it is joined to by pipes on other storeys,
 * right of what feeds it on its own. A few rounds of moving each to the middle of its neighbours
 * (the barycentre method of layered drawings; Sugiyama and others 1981, from memory).
 */
final class Arrangement {

  private static final int ROUNDS = 12;

  private final List<Station> stations;
  private final Map<String, Station> byId = new HashMap<>();
  private final Graph<Station, DefaultEdge> pipes = new DirectedMultigraph<>(DefaultEdge.class);
  private final Map<Station, Double> middles = new LinkedHashMap<>();

  private Arrangement(Installation drawing, List<Station> stations) {
    this.stations = stations;
    for (Station station : stations) {
      pipes.addVertex(station);
      station.ids().forEach(id -> byId.put(id, station));
    }
    for (Run run : drawing.runs()) {
      join(station(run, run.from()), station(run, run.to()));
    }
    drawing.weirs().forEach(weir -> join(byId.get(weir.from()), byId.get(weir.to())));
  }

  private Station station(Run run, RunEnd end) {
    return byId.getOrDefault(
        end.at(), byId.getOrDefault(Stations.floorOpening(run, end), stations.getFirst()));
  }

  private void join(@Nullable Station from, @Nullable Station to) {
    if (from != null && to != null && !from.equals(to)) {
      pipes.addEdge(from, to);
    }
  }

  /** Left ends of the stations, without their margins, the leftmost margin beginning at 0. */
  static Map<Station, Double> of(Installation drawing, List<Station> stations) {
    Arrangement arrangement = new Arrangement(drawing, stations);
    List<String> storeys =
        drawing.storeys().stream()
            .sorted(Comparator.comparingDouble(Storey::elevation).reversed())
            .map(Storey::id)
            .toList();
    storeys.forEach(arrangement::startRow);
    for (int round = 0; round < ROUNDS; round++) {
      storeys.forEach(arrangement::settleRow);
      storeys.reversed().forEach(arrangement::settleRow);
    }
    return arrangement.leftEnds();
  }

  private void startRow(String storey) {
    double at = 0;
    for (Station station : row(storey)) {
      middles.put(station, at + station.span() / 2);
      at += station.span();
    }
  }

  private List<Station> row(String storey) {
    return stations.stream().filter(station -> station.storey().equals(storey)).toList();
  }

  private void settleRow(String storey) {
    Map<Station, Double> wishes = new HashMap<>();
    row(storey).forEach(station -> wishes.put(station, wish(station)));
    Map<String, Double> rooms = new HashMap<>();
    row(storey)
        .forEach(
            station -> rooms.merge(station.room(), wishes.getOrDefault(station, 0.0), Math::min));
    List<Station> sorted =
        row(storey).stream()
            .sorted(
                Comparator.<Station>comparingDouble(
                        station -> rooms.getOrDefault(station.room(), 0.0))
                    .thenComparing(Station::room)
                    .thenComparingDouble(station -> wishes.getOrDefault(station, 0.0))
                    .thenComparing(Station::key))
            .toList();
    double[] ends =
        Spread.leftEnds(
            sorted.stream().mapToDouble(station -> wishes.getOrDefault(station, 0.0)).toArray(),
            sorted.stream().mapToDouble(Station::span).toArray());
    for (int i = 0; i < ends.length; i++) {
      middles.put(sorted.get(i), ends[i] + sorted.get(i).span() / 2);
    }
  }

  private double wish(Station station) {
    double sum = 0;
    double weights = 0;
    for (DefaultEdge pipe : pipes.edgesOf(station)) {
      boolean feeds = pipes.getEdgeSource(pipe).equals(station);
      Station other = feeds ? pipes.getEdgeTarget(pipe) : pipes.getEdgeSource(pipe);
      boolean sameRow = other.storey().equals(station.storey());
      double apart = (station.span() + other.span()) / 2;
      double beside = sameRow ? (feeds ? -apart : apart) : 0;
      double weight = station.width() < other.width() || !sameRow ? 1 : 0.1;
      sum += weight * (middles.getOrDefault(other, 0.0) + beside);
      weights += weight;
    }
    return weights == 0 ? middles.getOrDefault(station, 0.0) : sum / weights;
  }

  private Map<Station, Double> leftEnds() {
    double leftmost =
        middles.entrySet().stream()
            .mapToDouble(entry -> entry.getValue() - entry.getKey().span() / 2)
            .min()
            .orElse(0);
    Map<Station, Double> ends = new LinkedHashMap<>();
    middles.forEach(
        (station, middle) -> ends.put(station, middle - station.width() / 2 - leftmost));
    return ends;
  }
}
