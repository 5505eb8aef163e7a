package dryfloor.app.view.panel;

import dryfloor.app.view.Words;
import dryfloor.model.file.Problem;

/** A problem of a file in words: where, what, and what would be right. */
public final class ProblemWords {

  private ProblemWords() {}

  /** All of it, what would be right on a line of its own. */
  public static String of(Problem problem) {
    String remedy = problem.remedy().isEmpty() ? "" : "\n\u2192 " + problem.remedy();
    String what = path(problem) + problem.message() + remedy;
    return problem.line() < 1
        ? what
        : Words.of("notice.place", problem.line(), problem.column(), what);
  }

  private static String path(Problem problem) {
    return problem.path().isEmpty() ? "" : problem.path() + ": ";
  }
}
