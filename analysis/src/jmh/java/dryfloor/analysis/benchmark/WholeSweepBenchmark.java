package dryfloor.analysis.benchmark;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Every single failure by the size of the house, on one core and on two. The largest has some two
 * thousand failures and takes minutes, so each is swept once only, after another house has warmed
 * the machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class WholeSweepBenchmark {

  private static final int TO_WARM_UP = 40;

  @Param({"10", "30", "100", "300", "1000"})
  int components;

  @Param({"1", "2"})
  int threads;

  private Installation house = GrowingHouse.of(10);

  @Setup(Level.Trial)
  public void warmUp() throws BaselineProblem {
    for (int i = 0; i < 3; i++) {
      Sweep.everyFailure(GrowingHouse.of(TO_WARM_UP), 1, Progress.NONE);
    }
    house = GrowingHouse.of(components);
  }

  @Benchmark
  public SweepResult everyFailure(CpuTime cpu) throws BaselineProblem {
    cpu.begin();
    SweepResult result = Sweep.everyFailure(house, threads, Progress.NONE);
    cpu.endOfProcess();
    return result;
  }
}
