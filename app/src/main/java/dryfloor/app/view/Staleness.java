package dryfloor.app.view;

import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Shows that verdicts are those of an earlier drawing: paler, and in a word over the picture. */
final class Staleness {

  /** Set here and not by a style sheet, which would go through everything below each time. */
  private static final double PALE = 0.5;

  private final Work work;
  private final Node all;
  private final Node looked;
  private final Label word = new Label();

  /**
   * Watches the answers of a window.
   *
   * @param all tells every verdict
   * @param looked tells that of the failure that is looked at
   */
  Staleness(Work work, Node all, Node looked) {
    this.work = work;
    this.all = all;
    this.looked = looked;
    word.setId("stale-word");
    word.getStyleClass().add("stale-word");
    word.setMouseTransparent(true);
    word.setWrapText(true);
    work.ahead().addListener((ahead, before, now) -> show());
    work.installation().addListener((drawing, before, now) -> show());
    work.answers().addListener((answers, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    show();
  }

  Label word() {
    return word;
  }

  private void show() {
    String text = sentence(work);
    word.setText(text);
    word.setVisible(!text.isEmpty());
    all.setOpacity(text.isEmpty() ? 1 : PALE);
    looked.setOpacity(text.isEmpty() || work.fresh().isPresent() ? 1 : PALE);
  }

  /** Why the verdicts are not those of the present drawing; empty if they are. */
  static String sentence(Work work) {
    if (work.isStale() && work.fresh().isPresent()) {
      return Words.of("stale.others");
    }
    return switch (work.answers().get()) {
      case Answers.Awaited awaited -> Words.of("list.waiting");
      case Answers.Known known ->
          !work.isStale() ? "" : Words.of(known.isWhole() ? "list.stale" : "list.waiting");
      case Answers.Faulty faulty ->
          work.isStale()
              ? Words.of("list.stale")
              : Words.of("stale.faulty", faulty.findings().getFirst().message());
      case Answers.Unsettled unsettled ->
          work.isStale() ? Words.of("list.stale") : Words.of("stale.unsettled", unsettled.reason());
    };
  }
}
