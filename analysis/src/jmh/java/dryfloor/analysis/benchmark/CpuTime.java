package dryfloor.analysis.benchmark;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Time that processors spent on a benchmark: unlike the time by the clock it hardly depends on what
 * else the machine does. The table adds it up over the iterations; {@link Benchmarks} tells its
 * medians.
 */
@AuxCounters(AuxCounters.Type.EVENTS)
@State(Scope.Thread)
public class CpuTime {

  /** Processor time (ms). */
  public double cpu;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final OperatingSystemMXBean process =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
  private long ofThread;
  private long ofProcess;

  void begin() {
    ofThread = threads.getCurrentThreadCpuTime();
    ofProcess = process.getProcessCpuTime();
  }

  /** Counts what this thread did since the beginning. */
  void endOfThread() {
    cpu = (threads.getCurrentThreadCpuTime() - ofThread) / 1e6;
  }

  /** Counts what all threads did since the beginning, those that compile and collect included. */
  void endOfProcess() {
    cpu = (process.getProcessCpuTime() - ofProcess) / 1e6;
  }
}
