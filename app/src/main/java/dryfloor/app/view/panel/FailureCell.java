package dryfloor.app.view.panel;

import dryfloor.app.report.Answer;
import dryfloor.app.report.ListedFailure;
import dryfloor.app.view.Words;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** A line of the list: verdict as sign and word, margin, name, and where the water ended up. */
final class FailureCell extends WrappedCell<FailureListPanel.Line> {

  @Override
  protected List<Region> parts(FailureListPanel.Line line) {
    return line.listed().map(FailureCell::parts).orElseGet(() -> List.of(wrapped(line.said())));
  }

  private static List<Region> parts(ListedFailure listed) {
    Label name = wrapped(listed.name());
    Label where = wrapped(listed.where());
    where.getStyleClass().add("failure-where");
    return List.of(top(listed), name, where);
  }

  private static HBox top(ListedFailure listed) {
    Label verdict = new Label(listed.answer().sign(true) + " " + listed.answer().word());
    dress(verdict, listed.answer());
    verdict.setMinWidth(USE_PREF_SIZE);
    Label margin = new Label(listed.margin());
    margin.getStyleClass().add("failure-margin");
    margin.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(margin, Priority.ALWAYS);
    return new HBox(8, verdict, margin);
  }

  /** Gives a verdict its colour, beside its sign and word. */
  static void dress(Label verdict, Answer answer) {
    verdict.getStyleClass().removeIf(style -> style.startsWith("verdict"));
    verdict
        .getStyleClass()
        .addAll("verdict", "verdict-" + answer.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  @Override
  protected String spoken(FailureListPanel.Line line) {
    return line.listed()
        .map(
            listed ->
                Words.of(
                    "list.spoken",
                    listed.answer().word(),
                    listed.name(),
                    listed.where(),
                    listed.margin()))
        .orElseGet(line::said);
  }
}
