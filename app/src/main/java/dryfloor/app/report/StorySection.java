package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import java.util.List;

/** The chain of events, each cause before its effect. */
final class StorySection {

  /** Characters for the time. */
  private static final int LEAST = 13;

  private StorySection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    lines.heading("What happens");
    if (outcome.story().isEmpty()) {
      lines.add("  Nothing that shows.");
    }
    List<StoryDigest.Moment> moments = new StoryDigest(wording).of(outcome);
    int width =
        moments.stream().mapToInt(moment -> moment.time().length() + 1).reduce(LEAST, Math::max);
    for (StoryDigest.Moment moment : moments) {
      String padding = " ".repeat(width - moment.time().length());
      lines.paragraph(padding + moment.time() + "  ", " ".repeat(width + 2), moment.sentence());
    }
  }
}
