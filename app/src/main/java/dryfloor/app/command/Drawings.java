package dryfloor.app.command;

import dryfloor.model.check.Finding;
import dryfloor.model.file.Problem;
import dryfloor.model.file.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds and reads the drawings that were asked for; a folder means every .json file in it and in
 * its folders but for schemas.
 */
final class Drawings {

  private final DrawingReader reader;

  Drawings(DrawingReader reader) {
    this.reader = reader;
  }

  List<Loaded> loadAll(List<Path> filesAndFolders) {
    List<Loaded> loaded = new ArrayList<>();
    for (Path path : filesAndFolders) {
      if (Files.isDirectory(path) && !path.toString().isEmpty()) {
        loaded.addAll(loadFolder(path));
      } else {
        loaded.add(load(path));
      }
    }
    return loaded;
  }

  Loaded load(Path file) {
    if (file.toString().isEmpty()) {
      return refused(Path.of("(no name)"), "the name of the file is empty", "name a drawing");
    }
    if (Files.isDirectory(file)) {
      return refused(file, "this is a folder", "name one file in it");
    }
    if (!Files.exists(file)) {
      return refused(
          file, "there is no such file", "check its name; 'dryfloor new' writes one to begin with");
    }
    return switch (reader.read(file, installation -> List.of())) {
      case Reading.Read read ->
          new Loaded.Drawing(file, read.installation(), read.warnings(), read.uncertain());
      case Reading.Rejected rejected -> new Loaded.Refused(file, rejected.problems());
    };
  }

  /** Tells where in the file it stands what was found in its drawing later on. */
  List<Problem> placed(Path file, Finding finding) {
    return switch (reader.read(file, installation -> List.of(finding))) {
      case Reading.Rejected rejected -> {
        // The reader cuts long messages short, and this one may be a whole story.
        Problem place = rejected.problems().getFirst();
        yield List.of(
            new Problem(
                place.line(), place.column(), place.path(), finding.message(), finding.remedy()));
      }
      // Somebody has changed the file meanwhile.
      case Reading.Read read -> List.of(new Problem(0, 0, "", finding.message(), finding.remedy()));
    };
  }

  private List<Loaded> loadFolder(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Loaded> loaded =
          files
              .filter(Drawings::isDrawing)
              .filter(Files::isRegularFile)
              .sorted()
              .map(this::load)
              .toList();
      return loaded.isEmpty()
          ? List.of(refused(folder, "no .json file is in this folder", "name a drawing"))
          : loaded;
    } catch (IOException | UncheckedIOException e) {
      return List.of(
          refused(folder, "the folder can't be read: " + e.getMessage(), "check the folder"));
    }
  }

  /** Not a schema, which says by its name that it is none. */
  private static boolean isDrawing(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(".json") && !name.endsWith(".schema.json");
  }

  private static Loaded refused(Path file, String message, String remedy) {
    return new Loaded.Refused(file, List.of(new Problem(0, 0, "", message, remedy)));
  }
}
