package dryfloor.analysis.practice;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/** Rules about where the water stands after the power has failed, put to the simulation. */
final class PowerRules {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  private final Installation drawing;
  private final Inquiry inquiry;

  PowerRules(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.drawing = inquiry.installation();
  }

  Stream<Warning> all() {
    if (drawing.circuits().isEmpty()) {
      return Stream.empty();
    }
    return outcome(List.of(POWER_LOST)).stream()
        .flatMap(lost -> Stream.concat(checkValves(lost), reservoirs(lost)));
  }

  private Optional<Outcome> outcome(List<Failure> failures) {
    return switch (inquiry.answer(failures)) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  private Stream<Warning> checkValves(Outcome lost) {
    if (lost.verdict() == Verdict.WET) {
      return Stream.empty();
    }
    return drawing.runs().stream()
        .flatMap(run -> run.parts().stream())
        .filter(Part.CheckValve.class::isInstance)
        .flatMap(valve -> alone(valve.id()).stream());
  }

  private Optional<Warning> alone(String checkValve) {
    return outcome(List.of(new Failure.CheckValveDoesNotClose(checkValve), POWER_LOST))
        .filter(outcome -> outcome.verdict() == Verdict.WET)
        .map(outcome -> new Warning.CheckValveAlone(checkValve, outcome.reachedFloors()));
  }

  private Stream<Warning> reservoirs(Outcome lost) {
    return drawing.vessels().stream()
        .filter(vessel -> vessel.role() == Vessel.Role.RESERVOIR)
        .flatMap(reservoir -> fedBy(reservoir).flatMap(fed -> tooLarge(reservoir, fed, lost)));
  }

  private Stream<Vessel> fedBy(Vessel reservoir) {
    return drawing.runs().stream()
        .filter(run -> begins(run, reservoir))
        .map(run -> run.to().at())
        .distinct()
        .flatMap(id -> drawing.vessels().stream().filter(v -> v.id().equals(id)))
        .filter(vessel -> !vessel.isBasin() && !vessel.id().equals(reservoir.id()));
  }

  private static boolean begins(Run run, Vessel vessel) {
    return run.from() instanceof RunEnd.Opening opening && opening.at().equals(vessel.id());
  }

  private Stream<Warning> tooLarge(Vessel reservoir, Vessel fed, Outcome lost) {
    double water = reservoir.shape().volumeBelow(reservoir.level() - reservoir.bottom());
    Set<String> beside = beside(fed.id());
    double room =
        drawing.vessels().stream()
            .filter(vessel -> beside.contains(vessel.id()))
            .mapToDouble(vessel -> room(vessel, lost))
            .sum();
    return water > room
        ? Stream.of(new Warning.ReservoirTooLarge(reservoir.id(), fed.id(), water, room))
        : Stream.empty();
  }

  /** A vessel and all that share its water over weirs: they rise together. */
  private Set<String> beside(String id) {
    Graph<String, DefaultEdge> joined = new SimpleGraph<>(DefaultEdge.class);
    drawing.vessels().forEach(vessel -> joined.addVertex(vessel.id()));
    drawing.weirs().forEach(weir -> joined.addEdge(weir.from(), weir.to()));
    return new ConnectivityInspector<>(joined).connectedSetOf(id);
  }

  private static double room(Vessel vessel, Outcome lost) {
    double holds = vessel.shape().capacity();
    double displaced =
        vessel.contents().stream()
            .mapToDouble(solid -> solid.volumeBelow(vessel.shape().height()))
            .sum();
    double after =
        lost.vessels().stream()
            .filter(outcome -> outcome.id().equals(vessel.id()))
            .mapToDouble(Outcome.VesselOutcome::volumeAfter)
            .sum();
    return Math.max(holds - displaced - after, 0);
  }
}
