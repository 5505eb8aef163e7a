package dryfloor.model.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Reads mutated files, remembers what was answered in a new way and what was not answered. */
final class ReaderFuzz {

  private static final String ALGORITHM = "L64X128MixRandom";
  private static final int ENOUGH_FAULTS = 20;
  private static final int LONGEST_TOLD = 1500;

  private final Path folder;
  private final Judge judge;
  private final Corpus corpus = new Corpus();
  private final Mutator mutator;
  private final Map<String, String> faults = new LinkedHashMap<>();
  private byte[] current = {};
  private long read;
  private long sound;

  /**
   * Begins with the sound files of the project.
   *
   * @param folder for the inputs that are not answered
   */
  ReaderFuzz(long seed, Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
    judge = new Judge(folder.resolve("input.json"));
    RandomGenerator random = RandomGeneratorFactory.of(ALGORITHM).create(seed);
    mutator = new Mutator(corpus, random);
    for (byte[] file : corpus.sound()) {
      read(file);
    }
  }

  /** Reads this many more inputs. */
  void run(long inputs) throws IOException {
    for (long i = 0; i < inputs && faults.size() < ENOUGH_FAULTS; i++) {
      read(mutator.next());
    }
  }

  private void read(byte[] input) throws IOException {
    current = input;
    read++;
    try {
      Judge.Answer answer = judge.judge(input);
      corpus.learn(input, answer.ways());
      sound += answer.sound() ? 1 : 0;
    } catch (AssertionError | RuntimeException | StackOverflowError | OutOfMemoryError e) {
      String kind = e.getClass().getSimpleName() + " " + Judge.withoutQuotes(e.toString());
      if (!faults.containsKey(kind)) {
        faults.put(kind, told(e) + ": see " + keep("fault-" + faults.size()));
      }
    }
  }

  private static String told(Throwable fault) {
    String text = fault.toString();
    StackTraceElement[] trace = fault.getStackTrace();
    String where = trace.length == 0 ? "" : " at " + trace[0];
    return text.substring(0, Math.min(text.length(), LONGEST_TOLD)) + where;
  }

  /** Leaves the input behind that is being read. */
  Path keep(String name) throws IOException {
    return Files.write(folder.resolve(name + ".json"), current);
  }

  /** What is wrong, one of each kind, with the input that shows it. */
  Iterable<String> faults() {
    return faults.values();
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d inputs, %d of them sound, %d different answers, %d inputs kept for them, "
            + "at most %.1f MB allocated to read one",
        read,
        sound,
        corpus.answers(),
        corpus.kept(),
        judge.mostAllocated() / 1e6);
  }
}
