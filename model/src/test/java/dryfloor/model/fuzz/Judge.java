package dryfloor.model.fuzz;

import com.sun.management.ThreadMXBean;
import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Problem;
import dryfloor.model.file.Reading;
import dryfloor.model.file.VisibleText;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Lets the reader read a file and says whether its answer is one. */
final class Judge {

  private static final Pattern QUOTED_OR_NUMBER =
      Pattern.compile("'[^']*'?|\"[^\"]*\"?|[-+0-9.][0-9.eE+-]*");
  private static final Pattern INDEX = Pattern.compile("\\[[0-9]+]");
  private static final int SHAPE = 70;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Measured: 1.3 kB for each byte of a file of problems, most of it soon given back. */
  private static final long BYTES_FOR_A_BYTE = 4_000;

  private static final long USUAL_BYTES = 4_000_000;

  private final Path file;
  private long mostAllocated;

  /**
   * Makes a judge.
   *
   * @param file that is overwritten with each input
   */
  Judge(Path file) {
    this.file = file;
  }

  /** What came of one input: the ways in which it was answered. */
  record Answer(Set<String> ways, boolean sound) {}

  /**
   * Reads an input.
   *
   * @throws AssertionError if the answer is none, or a wrong one
   */
  Answer judge(byte[] input) throws IOException {
    Files.write(file, input);
    return switch (read(input)) {
      case Reading.Rejected rejected -> {
        if (rejected.problems().isEmpty()) {
          throw new AssertionError("rejected without a word");
        }
        yield new Answer(told(rejected.problems(), input), false);
      }
      case Reading.Read read -> {
        Set<String> ways = told(read.warnings(), input);
        ways.add("sound");
        checkSound(read.installation());
        yield new Answer(ways, true);
      }
    };
  }

  private Reading read(byte[] input) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    Reading reading = InstallationFile.read(file);
    long allocated = THREADS.getCurrentThreadAllocatedBytes() - before;
    mostAllocated = Math.max(mostAllocated, allocated);
    if (allocated > USUAL_BYTES + BYTES_FOR_A_BYTE * input.length) {
      throw new AssertionError(
          "takes %d bytes of memory to read %d".formatted(allocated, input.length));
    }
    return reading;
  }

  /** The most memory that was allocated to read one input, kept or not (bytes). */
  long mostAllocated() {
    return mostAllocated;
  }

  private static Set<String> told(List<Problem> problems, byte[] input) {
    Set<String> ways = new HashSet<>();
    if (!problems.isEmpty()) {
      LineLengths lines = LineLengths.of(input);
      for (Problem problem : problems) {
        checkTold(problem, lines);
        ways.add(way(problem));
      }
    }
    return ways;
  }

  private static void checkTold(Problem problem, LineLengths lines) {
    if (!lines.hold(problem.line(), problem.column())) {
      throw new AssertionError("placed outside of the file: " + problem);
    }
    if (problem.message().isBlank() || problem.remedy().isBlank()) {
      throw new AssertionError("does not say what is wrong and what would be right: " + problem);
    }
    String all = problem.path() + problem.message() + problem.remedy();
    if (!VisibleText.of(all).equals(all)) {
      throw new AssertionError("holds what nobody sees: " + VisibleText.of(all));
    }
  }

  private static void checkSound(Installation installation) {
    Leaves leaves = Leaves.of(installation);
    leaves
        .notANumber()
        .ifPresent(
            what -> {
              throw new AssertionError("holds what is no number: " + what);
            });
    DrawingCheck.check(installation);
    for (Units units : Units.values()) {
      String text = InstallationWriter.text(installation, units);
      Installation again =
          switch (InstallationFile.readText(asStored(text))) {
            case Reading.Read read -> read.installation();
            case Reading.Rejected rejected ->
                throw new AssertionError(
                    "what was written in " + units + " is refused: " + rejected.problems());
          };
      Optional<String> difference = leaves.difference(Leaves.of(again));
      if (difference.isPresent()) {
        throw new AssertionError("written in " + units + ", " + difference.get());
      }
    }
  }

  /** The text as it comes back from a disk. */
  private static String asStored(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  /** What kind of problem where, without what it quotes, counts and measures. */
  private static String way(Problem problem) {
    String shape = INDEX.matcher(problem.path()).replaceAll("[]");
    return shortened(shape) + ": " + withoutQuotes(problem.message());
  }

  /** A message without what it quotes, counts and measures. */
  static String withoutQuotes(String message) {
    return shortened(QUOTED_OR_NUMBER.matcher(message).replaceAll("·"));
  }

  private static String shortened(String text) {
    return text.length() <= SHAPE ? text : text.substring(0, SHAPE);
  }
}
