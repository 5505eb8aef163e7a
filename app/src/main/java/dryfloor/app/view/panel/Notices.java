package dryfloor.app.view.panel;

import dryfloor.app.view.Words;
import dryfloor.model.file.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What the program has to say or to ask, above the drawing and without getting in its way: one can
 * look at what a question is about before answering it.
 */
public final class Notices extends VBox {

  private static final String LOOK =
      "-fx-background-color: -color-accent-subtle; -fx-border-width: 0 0 1 0;"
          + " -fx-border-color: -color-border-default;";

  private static final double LINE = 44;
  private static final int MOST_LINES = 5;

  /** Something that can be done about it. */
  public record Choice(String text, Runnable action) {}

  /** Nothing to say. */
  public Notices() {
    setId("notices");
  }

  /** Says something; what was said under the same id before goes. */
  public void tell(String id, String text, Choice... choices) {
    show(id, line(id, text, choices, true));
  }

  /** Asks something that stays until it is answered; its first answer can be given at once. */
  public void ask(String id, String text, Choice... choices) {
    HBox line = line(id, text, choices, false);
    show(id, line);
    line.getChildren().stream()
        .filter(Button.class::isInstance)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  /** Lists what is wrong or should be looked at in a file, each with its place. */
  public void list(String id, String text, List<Problem> problems) {
    list(id, text, problems, problem -> {});
  }

  /**
   * The same with something that can be done about it.
   *
   * @param goTo takes a problem that is clicked, or chosen with enter
   */
  public void list(
      String id, String text, List<Problem> problems, Consumer<Problem> goTo, Choice... choices) {
    ListView<Problem> list = new ListView<>();
    list.getItems().setAll(problems);
    list.setCellFactory(view -> new SentenceCell<>(ProblemWords::of));
    list.setId("notice-" + id + "-list");
    list.setAccessibleText(text);
    list.setPrefHeight(LINE * Math.min(MOST_LINES, problems.size()) + 4);
    list.setOnMouseClicked(click -> choose(list, goTo));
    list.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            choose(list, goTo);
          }
        });
    show(id, new VBox(line(id, text, choices, true), list));
  }

  private static void choose(ListView<Problem> list, Consumer<Problem> goTo) {
    Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(goTo);
  }

  /** Says it no more. */
  public void dismiss(String id) {
    find(id).ifPresent(getChildren()::remove);
  }

  private void show(String id, Region notice) {
    dismiss(id);
    notice.setId("notice-" + id);
    notice.getStyleClass().add("notice");
    notice.setPadding(new Insets(6, 12, 6, 12));
    notice.setStyle(LOOK);
    getChildren().add(notice);
  }

  private Optional<Node> find(String id) {
    return getChildren().stream().filter(node -> ("notice-" + id).equals(node.getId())).findFirst();
  }

  private HBox line(String id, String text, Choice[] choices, boolean closes) {
    Label label = new Label(text);
    label.setId("notice-" + id + "-text");
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(label, Priority.ALWAYS);
    HBox line = new HBox(8, label);
    line.setAlignment(Pos.CENTER_LEFT);
    for (Choice choice : choices) {
      line.getChildren().add(button(id, choice, line.getChildren().size()));
    }
    if (closes) {
      Choice close = new Choice(Words.of("notice.close"), () -> {});
      line.getChildren().add(button(id, close, line.getChildren().size()));
    }
    return line;
  }

  private Button button(String id, Choice choice, int number) {
    Button button = new Button(choice.text());
    button.setId("notice-" + id + "-" + number);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(
        event -> {
          dismiss(id);
          choice.action().run();
        });
    return button;
  }
}
