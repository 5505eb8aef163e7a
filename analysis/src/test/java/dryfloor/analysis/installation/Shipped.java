package dryfloor.analysis.installation;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The example installations that come with the project. */
public final class Shipped {

  private static final Path SCENARIOS = Path.of("..", "scenarios");

  private Shipped() {}

  /** Every installation file, by path. */
  public static List<Path> files() {
    try (Stream<Path> files = Files.walk(SCENARIOS)) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.toString().endsWith(".schema.json"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same as folder and name, {@code first-look/as-drawn} say. */
  public static List<String> names() {
    return files().stream()
        .map(file -> SCENARIOS.relativize(file).toString())
        .map(name -> name.substring(0, name.length() - ".json".length()))
        .toList();
  }

  public static Installation named(String name) {
    return read(SCENARIOS.resolve(name + ".json"));
  }

  public static Installation read(Path file) {
    return switch (InstallationFile.read(file)) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected ->
          throw new AssertionError(file + " can't be read: " + rejected.problems());
    };
  }
}
