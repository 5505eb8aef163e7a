package dryfloor.analysis.benchmark;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import java.util.concurrent.CancellationException;
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

/** From the wish to cancel a sweep on two threads, at moments here and there, to its return. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 10)
@Measurement(iterations = 60)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class CancelBenchmark {

  @Param({"100", "1000"})
  int components;

  private Installation house = GrowingHouse.of(10);
  private Thread sweep = new Thread(() -> {});
  private volatile boolean cancelled;
  private int asked;

  @Setup(Level.Trial)
  public void draw() {
    house = GrowingHouse.of(components);
  }

  /** Lets a sweep run for between 0.6 and 1.5 s, each time a little longer. */
  @Setup(Level.Invocation)
  public void begin() throws InterruptedException {
    cancelled = false;
    sweep = Thread.ofPlatform().start(this::sweep);
    Thread.sleep(600 + 37L * asked++ % 900);
  }

  private void sweep() {
    try {
      Sweep.everyFailure(house, 2, new UntilCancelled());
    } catch (CancellationException meant) {
      return;
    } catch (BaselineProblem unexpected) {
      throw new IllegalStateException(unexpected);
    }
  }

  @Benchmark
  public void cancel() throws InterruptedException {
    cancelled = true;
    sweep.join();
  }

  private final class UntilCancelled implements Progress {

    @Override
    public void finished(int done, int of) {}

    @Override
    public boolean cancelled() {
      return cancelled;
    }
  }
}
