package dryfloor.analysis.fuzz;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;

/** Sweeps extreme drawings and collects impossible answers, crashes, and what has no answer. */
final class EngineFuzz {

  private static final String ALGORITHM = "L64X128MixRandom";
  private static final int MOST_CHANGES = 12;
  private static final int SAMPLE = 8;

  private final List<String> files;
  private final RandomGenerator random;
  private final StepLimit limit;
  private final Path folder;
  private final Map<String, String> faults = new LinkedHashMap<>();
  private final Map<String, String> unanswered = new LinkedHashMap<>();
  private String current = "";
  private int drawings;
  private int spillingOrUnsettled;
  private int answers;
  private int unansweredCount;

  /**
   * Begins.
   *
   * @param files texts of sound drawings
   * @param steps that each answer may take
   * @param folder for the drawings that show something
   */
  EngineFuzz(long seed, List<String> files, int steps, Path folder) throws IOException {
    this.files = List.copyOf(files);
    this.random = RandomGeneratorFactory.of(ALGORITHM).create(seed);
    this.limit = new StepLimit(steps);
    this.folder = Files.createDirectories(folder);
  }

  /** Sweeps this many more drawings. */
  void run(long more) throws IOException {
    for (long i = 0; i < more; i++) {
      ExtremeNumbers extreme =
          new ExtremeNumbers(shorterOfTwo()).changed(1 + random.nextInt(MOST_CHANGES), random);
      current = extreme.text();
      sweep(extreme.installation().orElseThrow());
      drawings++;
    }
  }

  private String shorterOfTwo() {
    String one = files.get(random.nextInt(files.size()));
    String other = files.get(random.nextInt(files.size()));
    return one.length() < other.length() ? one : other;
  }

  private void sweep(Installation installation) throws IOException {
    Installation sampled = sample(installation);
    try {
      SweepResult result = Sweep.everyFailure(sampled, 1, limit);
      judge(sampled, "normal operation", result.normal());
      for (FailureResult each : result.results()) {
        judge(sampled, each);
      }
    } catch (BaselineProblem problem) {
      spillingOrUnsettled++;
      limit.finished(0, 0);
      if (problem.outcome().isPresent()) {
        judge(sampled, "normal operation", problem.outcome().get());
      }
    } catch (CancellationException cutShort) {
      tell(unanswered, "slow", CANCELLED, "normal operation");
      limit.finished(0, 0);
    } catch (RuntimeException | StackOverflowError | AssertionError crash) {
      StackTraceElement[] trace = crash.getStackTrace();
      String where = trace.length == 0 ? "" : " at " + trace[0];
      tell(faults, "crash", crash + where, "");
      limit.finished(0, 0);
    }
  }

  private void judge(Installation installation, FailureResult result) throws IOException {
    String id = FailureNames.id(result.failure());
    switch (result) {
      case FailureResult.Answered answered -> judge(installation, id, answered.outcome());
      case FailureResult.Unanswered none -> {
        boolean cutShort = none.reason().equals(CANCELLED);
        unansweredCount += cutShort ? 0 : 1;
        tell(unanswered, cutShort ? "slow" : "unanswered", none.reason(), id);
      }
      case FailureResult.Skipped skipped -> {}
    }
  }

  private void judge(Installation installation, String what, Outcome outcome) throws IOException {
    answers++;
    for (String doubt : PossibleAnswer.doubts(installation, outcome)) {
      tell(faults, "fault", doubt, what);
    }
  }

  /** Keeps the first of each kind. */
  private void tell(Map<String, String> told, String kind, String text, String failure)
      throws IOException {
    String sort = text.replaceAll("'[^']*'|[-+0-9.][0-9.eE+-]*|[a-z]+(-[a-z]+)+", "·");
    if (!told.containsKey(sort)) {
      Path file = folder.resolve(kind + "-" + told.size() + ".json");
      Files.writeString(file, current);
      told.put(sort, text + ", " + failure + ": see " + file);
    }
  }

  private static final String CANCELLED = "it was cancelled";

  /** The same drawing with a few of its failures, chosen by chance, and the others skipped. */
  private Installation sample(Installation drawn) {
    List<String> ids =
        FailureCatalogue.of(drawn).stream()
            .map(FailureNames::id)
            .collect(Collectors.toCollection(ArrayList::new));
    Collections.shuffle(ids, new Random(random.nextLong()));
    Set<String> chosen = new HashSet<>(ids.subList(0, Math.min(SAMPLE, ids.size())));
    return OnlyWith.failures(drawn, failure -> chosen.contains(FailureNames.id(failure)));
  }

  /** Leaves the drawing behind that is being swept. */
  Path keep(String name) throws IOException {
    return Files.writeString(folder.resolve(name + ".json"), current);
  }

  /** What is impossible, one of each kind. */
  Iterable<String> faults() {
    return faults.values();
  }

  int answers() {
    return answers;
  }

  @Override
  public String toString() {
    return drawings
        + " drawings, "
        + spillingOrUnsettled
        + " of them spill or do not settle when all is well, "
        + answers
        + " answers, "
        + unansweredCount
        + " without an answer, "
        + limit.cancelledAnswers()
        + " cut short, at most "
        + limit.longest()
        + " steps\nwithout an answer: "
        + String.join("\n  ", unanswered.values())
        + "\nimpossible: "
        + String.join("\n  ", faults.values());
  }
}
