package dryfloor.model.file;

import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads installation files. Whatever is wrong is reported with its place and with what would be
 * right, everything at once; only a syntax error hides what comes after it.
 */
public final class InstallationFile {

  /** More elements and parts than any building has; above it an answer could take days. */
  public static final int MOST_COMPONENTS = 20_000;

  private InstallationFile() {}

  /** Reads a file of at most 16 MB; a missing or unreadable one is rejected like a wrong one. */
  public static Reading read(Path file) {
    return read(file, installation -> List.of());
  }

  /**
   * Reads a file as {@link #read(Path)}, and asks somebody who knows more than the drawing says.
   *
   * @param further what else is found in an installation that is sound so far
   */
  public static Reading read(Path file, Function<Installation, List<Finding>> further) {
    Problems problems = new Problems();
    return FileText.read(file, problems)
        .map(text -> read(text, FileVersion.NEWEST, problems, further))
        .orElseGet(() -> new Reading.Rejected(problems.inOrder()));
  }

  /** Reads the text of a file. */
  public static Reading readText(String text) {
    return read(text, FileVersion.NEWEST, new Problems());
  }

  /** Reads the text of a file as {@link #read(Path, Function)} does. */
  public static Reading readText(String text, Function<Installation, List<Finding>> further) {
    return read(text, FileVersion.NEWEST, new Problems(), further);
  }

  /** The text of a file, whether it is a drawing or not; nothing where it can't be had as text. */
  public static Optional<String> text(Path file) {
    return FileText.read(file, new Problems());
  }

  static Reading read(String text, FileVersion version, Problems problems) {
    return read(text, version, problems, installation -> List.of());
  }

  private static Reading read(
      String text,
      FileVersion version,
      Problems problems,
      Function<Installation, List<Finding>> further) {
    return LocatedReader.read(text, problems)
        .flatMap(value -> root(value, problems))
        .flatMap(root -> version.bringUp(root, problems))
        .map(root -> installation(root, problems, further))
        .orElseGet(() -> new Reading.Rejected(problems.inOrder()));
  }

  private static Optional<Located.Structure> root(Located value, Problems problems) {
    if (value instanceof Located.Structure root) {
      return Optional.of(root);
    }
    problems.add(
        value.place(),
        "the file holds " + value.description(),
        "it begins with an object: { \"dryfloor\": 1, ...");
    return Optional.empty();
  }

  private static Reading installation(
      Located.Structure root, Problems problems, Function<Installation, List<Finding>> further) {
    DrawnIds ids = DrawnIds.of(root, problems);
    if (ids.count() > MOST_COMPONENTS) {
      problems.add(
          root.place(),
          "the file draws " + ids.count() + " components",
          "at most " + MOST_COMPONENTS + "; split the installation into parts that share no water");
      return new Reading.Rejected(problems.inOrder());
    }
    Context context = new Context(problems, ids);
    Fields fields = new Fields(root, Form.INSTALLATION, context);
    Installation installation = InstallationReader.read(fields);
    Problems warnings = new Problems();
    FindingPlaces places = new FindingPlaces(root, ids);
    places.check(installation, problems, warnings);
    if (problems.isEmpty()) {
      places.add(further.apply(installation), problems, warnings);
    }
    UncertainDrawing uncertain =
        UncertainDrawing.of(root, context, other -> installation(other, new Problems(), further));
    if (problems.isEmpty()) {
      uncertain.checkEnds(problems);
    }
    if (!problems.isEmpty()) {
      return new Reading.Rejected(problems.inOrder());
    }
    if (installation.componentCount() != ids.count()) {
      throw new IllegalStateException(
          "the reader lost one of " + ids.count() + " components without a word: a mistake in it");
    }
    return new Reading.Read(
        installation.withTolerances(UncertainDrawing.tolerances(context)),
        warnings.inOrder(),
        uncertain);
  }
}
