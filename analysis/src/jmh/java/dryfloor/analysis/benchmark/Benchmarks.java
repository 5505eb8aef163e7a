package dryfloor.analysis.benchmark;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/**
 * Runs the benchmarks that are asked for, which print their table, and adds how the time of each
 * grows with the size of the house.
 */
public final class Benchmarks {

  /** From this size on growth is measured: smaller ones spend their time on the way in and out. */
  private static final int SMALLEST = 30;

  private Benchmarks() {}

  /**
   * Runs them.
   *
   * @param arguments as of JMH
   */
  public static void main(String... arguments)
      throws RunnerException, CommandLineOptionException {
    Collection<RunResult> results = new Runner(new CommandLineOptions(arguments)).run();
    Map<String, TreeMap<Integer, Double>> bySize = new TreeMap<>();
    for (RunResult result : results) {
      String components = result.getParams().getParam("components");
      Result<?> cpu = result.getSecondaryResults().get("cpu");
      if (components != null && components.matches("\\d+") && cpu != null) {
        String threads = result.getParams().getParam("threads");
        String name =
            result.getPrimaryResult().getLabel() + (threads == null ? "" : " on " + threads);
        bySize
            .computeIfAbsent(name, label -> new TreeMap<>())
            .put(Integer.valueOf(components), cpu.getStatistics().getPercentile(50));
      }
    }
    System.out.println("\nProcessor time (ms), medians by components, and growth from " + SMALLEST + " on");
    bySize.forEach(
        (name, medians) ->
            System.out.printf(
                Locale.ROOT, "%-30s %s  exponent %.2f%n", name, medians, exponent(medians)));
  }

  /** The power of the size with which the time grows between the least and the greatest size. */
  private static double exponent(TreeMap<Integer, Double> medians) {
    Integer first = medians.ceilingKey(SMALLEST);
    Integer last = medians.lastKey();
    if (first == null || first.equals(last)) {
      return Double.NaN;
    }
    return Math.log(medians.get(last) / medians.get(first)) / Math.log((double) last / first);
  }
}
