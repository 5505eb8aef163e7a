package dryfloor.model.graph;

import dryfloor.model.Installation;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/** Groups runs by the junctions they share: vessels separate runs, junctions tie them together. */
final class HydraulicGroups {

  private HydraulicGroups() {}

  static List<HydraulicGroup> of(Installation installation) {
    Set<String> runs = ids(installation.runs().stream().map(Run::id));
    Set<String> junctions = ids(installation.junctions().stream().map(Junction::id));
    Graph<String, DefaultEdge> meetings = new SimpleGraph<>(DefaultEdge.class);
    runs.forEach(meetings::addVertex);
    junctions.forEach(meetings::addVertex);
    for (Run run : installation.runs()) {
      for (RunEnd end : List.of(run.from(), run.to())) {
        if (junctions.contains(end.at()) && !run.id().equals(end.at())) {
          meetings.addEdge(run.id(), end.at());
        }
      }
    }
    return new ConnectivityInspector<>(meetings)
        .connectedSets().stream()
            .map(set -> new HydraulicGroup(common(set, runs), common(set, junctions)))
            .filter(group -> !group.runs().isEmpty())
            .sorted(
                Comparator.comparing(group -> group.runs().stream().sorted().toList().getFirst()))
            .toList();
  }

  private static Set<String> ids(Stream<String> ids) {
    return ids.collect(Collectors.toSet());
  }

  private static Set<String> common(Set<String> a, Set<String> b) {
    Set<String> both = new HashSet<>(a);
    both.retainAll(b);
    return both;
  }
}
