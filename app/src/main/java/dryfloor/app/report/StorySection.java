package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;

/** The chain of events, each cause before its effect. */
final class StorySection {

  private static final int TIME_WIDTH = 13;

  private StorySection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    lines.heading("What happens");
    if (outcome.story().isEmpty()) {
      lines.add("  Nothing that shows.");
    }
    StorySentence sentence = new StorySentence(wording);
    for (StoryEvent event : outcome.story()) {
      String time = wording.amounts().time(event.time());
      String padding = " ".repeat(Math.max(1, TIME_WIDTH - time.length()));
      lines.paragraph(padding + time + "  ", " ".repeat(TIME_WIDTH + 2), sentence.of(event));
    }
  }
}
