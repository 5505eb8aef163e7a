package dryfloor.analysis.benchmark;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import dryfloor.model.Installation;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A hundred thousand failures in one process with little memory; tells what is in use after each
 * twenty thousand, garbage collected.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(value = 1, jvmArgs = "-Xmx64m")
public class MemoryBenchmark {

  private static final int RUNS = 100_000;
  private static final int TELL_EVERY = 20_000;

  private final Installation house = GrowingHouse.of(10);

  @Benchmark
  public double hundredThousandRuns() {
    FlowNetwork network = FlowNetwork.of(house, List.of());
    Course normal = Simulation.ofNormalOperation(network, Accuracy.USUAL, () -> false);
    List<Failure> failures =
        List.of(new Failure.BuildingLosesPower(), new Failure.PumpStops("return-pump-1"));
    double sum = 0;
    for (int run = 0; run <= RUNS; run++) {
      Failure failure = failures.get(run % failures.size());
      FlowNetwork failed = FlowNetwork.of(house, FailureResolver.resolve(house, List.of(failure)));
      Course course = Simulation.ofFailure(normal, failed, Accuracy.USUAL, () -> false);
      Outcome outcome = OutcomeBuilder.of(course, List.of());
      sum += outcome.margin().freeboard();
      if (run % TELL_EVERY == 0) {
        tell(run);
      }
    }
    return sum;
  }

  private static void tell(int runs) {
    System.gc();
    double used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
    System.out.printf(Locale.ROOT, "%nafter %d runs %.2f MB are in use", runs, used);
  }
}
