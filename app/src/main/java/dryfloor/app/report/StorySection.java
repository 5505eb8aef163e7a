package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;

/** The chain of events, each cause before its effect. */
final class StorySection {

  private static final int TIME_WIDTH = 13;

  private StorySection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    lines.heading("What happens");
    if (outcome.story().isEmpty()) {
      lines.add("  Nothing that shows.");
    }
    for (StoryDigest.Moment moment : new StoryDigest(wording).of(outcome.story())) {
      String padding = " ".repeat(Math.max(1, TIME_WIDTH - moment.time().length()));
      lines.paragraph(
          padding + moment.time() + "  ", " ".repeat(TIME_WIDTH + 2), moment.sentence());
    }
  }
}
