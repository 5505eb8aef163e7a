package dryfloor.analysis.benchmark;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.List;
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
 * All single failures of installations of some thirty and fifty components on one core and of those
 * of more than sixty on two, and one failure with its normal operation, as when a slider moves.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(value = 1, jvmArgs = "-Xmx256m")
public class SweepBenchmark {

  private static final List<Failure> POWER_LOST = List.of(new Failure.BuildingLosesPower());

  private final Installation loft = Shipped.read(asDrawn("loft-reservoir"));
  private final Installation rackRoom = Shipped.read(corrected("research-rack-room"));
  private final Installation restaurant = Shipped.read(corrected("restaurant-seafood"));
  private final Installation grandHall = Shipped.read(corrected("grand-hall"));

  private static Path asDrawn(String scenario) {
    return Path.of("..", "scenarios", scenario, "as-drawn.json");
  }

  private static Path corrected(String scenario) {
    return Path.of("..", "scenarios", scenario, "corrected.json");
  }

  @Benchmark
  public SweepResult everyFailureOfTheLoftOnOneCore() throws BaselineProblem {
    return Sweep.everyFailure(loft, 1, Progress.NONE);
  }

  @Benchmark
  public SweepResult everyFailureOfTheRackRoomOnTwoCores() throws BaselineProblem {
    return Sweep.everyFailure(rackRoom, 2, Progress.NONE);
  }

  @Benchmark
  public SweepResult everyFailureOfTheRestaurantOnOneCore() throws BaselineProblem {
    return Sweep.everyFailure(restaurant, 1, Progress.NONE);
  }

  /** Takes minutes, so that warming up would change little. */
  @Benchmark
  @Warmup(iterations = 0)
  @Measurement(iterations = 2)
  public SweepResult everyFailureOfTheGrandHallOnTwoCores() throws BaselineProblem {
    return Sweep.everyFailure(grandHall, 2, Progress.NONE);
  }

  @Benchmark
  @Warmup(iterations = 20)
  @Measurement(iterations = 20)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public FailureResult powerLossOfTheRestaurant() throws BaselineProblem {
    return Sweep.together(restaurant, POWER_LOST);
  }

  @Benchmark
  @Warmup(iterations = 5)
  @Measurement(iterations = 5)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public FailureResult powerLossOfTheGrandHall() throws BaselineProblem {
    return Sweep.together(grandHall, POWER_LOST);
  }
}
