package dryfloor.app.report;

import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.List;

/** What is wrong in a file, as file:line:column, what it is and what would be right. */
public final class ProblemReport {

  private ProblemReport() {}

  /** One line or two for each problem. */
  public static String of(Path file, List<Problem> problems, Ink ink) {
    Lines lines = new Lines(ink);
    for (Problem problem : problems) {
      lines.add(place(file, problem) + problem.message());
      if (!problem.remedy().isEmpty()) {
        lines.add("    " + Sentences.capital(problem.remedy()));
      }
    }
    return lines.text();
  }

  /** A sound file, with what should be looked at in it. */
  public static String sound(Path file, int components, List<Problem> warnings, Ink ink) {
    String looked = warnings.isEmpty() ? "" : "; please look at this:";
    String sound =
        VisibleText.of(file.toString()) + ": sound, " + components + " components" + looked;
    return ink.fit(sound) + "\n" + (warnings.isEmpty() ? "" : of(file, warnings, ink));
  }

  private static String place(Path file, Problem problem) {
    String name = VisibleText.of(file.toString());
    String path = problem.path().isEmpty() ? "" : problem.path() + ": ";
    if (problem.line() < 1) {
      return name + ": " + path;
    }
    return name + ":" + problem.line() + ":" + problem.column() + ": " + path;
  }
}
