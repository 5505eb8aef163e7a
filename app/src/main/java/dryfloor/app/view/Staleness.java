package dryfloor.app.view;

import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Shows that verdicts are those of an earlier drawing: paler, and in a word over the picture. */
final class Staleness {

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final Work work;
  private final List<Node> verdicts;
  private final Label word = new Label();

  /**
   * Watches the answers of a window.
   *
   * @param verdicts parts of the window that tell them
   */
  Staleness(Work work, List<Node> verdicts) {
    this.work = work;
    this.verdicts = List.copyOf(verdicts);
    word.setId("stale-word");
    word.getStyleClass().add("stale-word");
    word.setMouseTransparent(true);
    word.setWrapText(true);
    verdicts.forEach(part -> part.getStyleClass().add("verdicts"));
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
    verdicts.forEach(part -> part.pseudoClassStateChanged(STALE, !text.isEmpty()));
  }

  /** Why the verdicts are not those of the present drawing; empty if they are. */
  static String sentence(Work work) {
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
