package dryfloor.app.view.panel;

import dryfloor.app.drawing.Scene;
import dryfloor.app.report.MovingScene;
import dryfloor.app.view.Words;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

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
    heading.setText(Words.of(atEnd ? "ways.taken" : "ways.now"));
    list.setAccessibleText(heading.getText());
    List<String> lines = WayWords.all(now, film.wording().names());
    if (!lines.equals(list.getItems())) {
      list.getItems().setAll(lines);
    }
  }

  /** A line that wraps. */
  private static final class Cell extends WrappedCell<String> {

    @Override
    protected List<Region> parts(String line) {
      return List.of(wrapped(line));
    }

    @Override
    protected String spoken(String line) {
      return line;
    }
  }
}
