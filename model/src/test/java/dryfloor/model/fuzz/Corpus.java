package dryfloor.model.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/**
 * Files to start from: all sound ones of the project, and those that were answered in a new way.
 */
final class Corpus {

  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final Path SAMPLES = Path.of("src", "test", "resources", "installations");
  private static final int CHOICE = 3;
  private static final int MOST_FILES = 6_000;
  private static final int LONGEST_KEPT = 40_000;

  private final List<byte[]> sound;
  private final List<byte[]> novel = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  Corpus() {
    sound = Stream.of(SCENARIOS, SAMPLES).flatMap(Corpus::filesIn).map(Corpus::bytes).toList();
    assertThat(sound).hasSizeGreaterThan(10);
  }

  private static Stream<Path> filesIn(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.toString().endsWith(".schema.json"))
          .sorted()
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A sound file, or one that once was answered in a new way; more often a short one. */
  byte[] any(RandomGenerator random) {
    List<byte[]> files = novel.isEmpty() || random.nextBoolean() ? sound : novel;
    return Stream.generate(() -> Dictionary.any(files, random))
        .limit(CHOICE)
        .min(Comparator.comparingInt(file -> file.length))
        .orElseThrow();
  }

  /** Keeps a file if one of the ways in which it was answered is new. */
  void learn(byte[] file, Set<String> answers) {
    boolean isNew = seen.addAll(answers);
    if (isNew && file.length > 0 && file.length <= LONGEST_KEPT && novel.size() < MOST_FILES) {
      novel.add(file);
    }
  }

  /** The sound files themselves. */
  List<byte[]> sound() {
    return sound;
  }

  /** How many different answers there were. */
  int answers() {
    return seen.size();
  }

  /** How many files were kept because of their answers. */
  int kept() {
    return novel.size();
  }
}
