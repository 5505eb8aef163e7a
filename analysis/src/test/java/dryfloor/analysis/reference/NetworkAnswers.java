package dryfloor.analysis.reference;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;

import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/** What the simulation says of pipes that meet; flows are read from its ledger. */
final class NetworkAnswers {

  /** Long beside the second or so in which the pipes that feed and drain a network fill. */
  private static final double AWAY = 1e4;

  /** Below all reservoirs, so that everything is full. */
  private static final double DEEP = -4;

  private static final double ENTRANCE = 0.5;
  private static final double EXIT = 1.0;

  private static final Map<String, Network> NETWORKS = new ConcurrentHashMap<>();
  private static final Map<String, Outcome> OUTCOMES = new ConcurrentHashMap<>();

  private NetworkAnswers() {}

  /** The networks that rows can name. */
  static void know(Map<String, Network> networks) {
    NETWORKS.putAll(networks);
  }

  static double flow(Given given) {
    return flow(given.text("network"), given.text("pipe"));
  }

  static double velocity(Given given) {
    return flow(given) / PipeAnswers.area(line(given).bore());
  }

  static double headLost(Given given) {
    Network.Line line = line(given);
    return new PipeAnswers.Pipe(line.bore(), 0.0, 0.0, line.losses(), 1e-8).head(flow(given));
  }

  static double pressureLost(Given given) {
    return headLost(given) * given.number("density_kg_per_m3") * Physical.GRAVITY;
  }

  /** At the end of a pipe that comes from a reservoir, over the datum or a height of its own. */
  static double junctionHead(Given given) {
    Network.Line line = line(given);
    Map<String, Double> levels = network(given.text("network")).levels();
    double head =
        levels.containsKey(line.from())
            ? levels.getOrDefault(line.from(), Double.NaN) - headLost(given)
            : levels.getOrDefault(line.to(), Double.NaN) + headLost(given);
    return head - given.numberOrZero("junctionElevation_m");
  }

  static double junctionPressure(Given given) {
    return junctionHead(given) * given.number("density_kg_per_m3") * Physical.GRAVITY;
  }

  static double flowGained(Given given) {
    return flow(given) - flow(given.text("before"), given.text("pipe"));
  }

  static double flowGainedShare(Given given) {
    return flowGained(given) / flow(given.text("before"), given.text("pipe"));
  }

  private static Network.Line line(Given given) {
    return network(given.text("network")).line(given.text("pipe"));
  }

  private static Network network(String name) {
    Network network = NETWORKS.get(name);
    if (network == null) {
      throw new IllegalArgumentException("no network is called '" + name + "'");
    }
    return network;
  }

  private static double flow(String name, String pipe) {
    Network.Line line = network(name).line(pipe);
    Outcome outcome = OUTCOMES.computeIfAbsent(name, missing -> simulate(network(missing)));
    return (carried(outcome, pipe, line.from(), line.to())
            - carried(outcome, pipe, line.to(), line.from()))
        / AWAY;
  }

  private static Outcome simulate(Network network) {
    Plan plan =
        Plan.of("Network")
            .away(AWAY)
            .storey("ground", DEEP - 1)
            .floor("yard", 1e9)
            .circuit("power");
    network
        .levels()
        .forEach(
            (name, level) ->
                plan.vessel(
                    name,
                    box(1e4, 1e4, 200),
                    v -> v.in("yard").raised(1).level(level - DEEP).fresh()));
    for (String junction : junctions(network)) {
      plan.junction(junction, DEEP);
    }
    for (Network.Line line : network.pipes()) {
      plan.run(line.name(), r -> draw(network, line, r));
    }
    network.fed().forEach((junction, flow) -> feed(plan, junction, flow));
    network.taken().forEach((junction, flow) -> take(plan, junction, flow));
    double through = network.fed().values().stream().mapToDouble(flow -> flow).sum();
    for (String junction : network.outlets()) {
      plan.drain("outlet", DEEP - 0.5)
          .run(
              "outlet-pipe",
              r -> r.fromJunction(junction).toDrain("outlet").bore(boreFor(through)).extraLoss(20));
    }
    return Trial.normal(plan.draw());
  }

  private static Set<String> junctions(Network network) {
    Set<String> junctions = new TreeSet<>();
    for (Network.Line line : network.pipes()) {
      junctions.add(line.from());
      junctions.add(line.to());
    }
    junctions.removeAll(network.levels().keySet());
    return junctions;
  }

  /** What the ends at reservoirs count by themselves is taken off again. */
  private static void draw(Network network, Network.Line line, RunPlan run) {
    boolean fromReservoir = network.isReservoir(line.from());
    boolean toReservoir = network.isReservoir(line.to());
    if (fromReservoir) {
      run.from(line.from(), 0);
    } else {
      run.fromJunction(line.from());
    }
    if (toReservoir) {
      run.to(line.to(), 0);
    } else {
      run.toJunction(line.to());
    }
    double ends = (fromReservoir ? ENTRANCE : 0.0) + (toReservoir ? EXIT : 0.0);
    run.bore(line.bore()).length(1e-3).extraLoss(line.losses() - ends);
  }

  /** For some 1.3 m/s. */
  private static double boreFor(double flow) {
    return Math.sqrt(flow);
  }

  private static void feed(Plan plan, String junction, double flow) {
    String source = "source-" + junction;
    plan.source(source, DEEP + 0.5, flow)
        .run(
            "feed-" + junction, r -> r.fromSupply(source).toJunction(junction).bore(boreFor(flow)));
  }

  /** A dosing pump takes its flow whatever the pressure. */
  private static void take(Plan plan, String junction, double flow) {
    String drain = "taken-" + junction;
    double litres = 1000 * flow;
    plan.drain(drain, DEEP - 0.5)
        .run(
            "take-" + junction,
            r ->
                r.fromJunction(junction)
                    .toDrain(drain)
                    .bore(0.05)
                    .dosingPump(
                        "taker-" + junction,
                        0.5,
                        "power",
                        litres - 5e-5,
                        1000,
                        litres + 5e-5,
                        0.001));
  }
}
