package dryfloor.app.view.panel;

import dryfloor.app.drawing.Scene;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Every way that water takes at the moment, or took up to the end, as text. */
final class WayList extends VBox {

  private final Label heading = new Label();
  private final ListView<String> list = new ListView<>();

  WayList() {
    super(6);
    list.setId("ways");
    list.setPlaceholder(new Label(Words.of("ways.none")));
    list.setCellFactory(view -> new Cell());
    heading.setWrapText(true);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(heading, list);
  }

  void show(Scene now, MovingScene film, boolean atEnd) {
    Names names = film.wording().names();
    heading.setText(Words.of(atEnd ? "ways.taken" : "ways.now"));
    list.setAccessibleText(heading.getText());
    List<String> lines =
        now.flows().stream()
            .filter(flow -> !flow.text().isEmpty())
            .map(flow -> text(flow, names))
            .toList();
    if (!lines.equals(list.getItems())) {
      list.getItems().setAll(lines);
    }
  }

  private static String text(Scene.Flow flow, Names names) {
    String path = names.label(flow.path());
    boolean told = flow.to().isEmpty() || flow.to().equals(flow.path());
    return told
        ? Words.of("ways.line", path, flow.text())
        : Words.of("ways.line.to", path, names.label(flow.to()), flow.text());
  }

  /** A line that wraps. */
  private static final class Cell extends ListCell<String> {
    Cell() {
      setWrapText(true);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable String line, boolean empty) {
      super.updateItem(line, empty);
      setText(empty || line == null ? "" : line);
    }
  }
}
