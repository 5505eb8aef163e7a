package dryfloor.app.view;

import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Region;

/** What stands at the right: what happens, and what is drawn. */
final class SideTabs extends TabPane {

  private final Tab drawing;

  SideTabs(Region happening, Region drawn) {
    drawing = new Tab(Words.of("side.drawing"), drawn);
    getTabs().addAll(new Tab(Words.of("side.happening"), happening), drawing);
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    setId("side-tabs");
    setAccessibleText(Words.of("side.spoken"));
  }

  void showDrawing() {
    getSelectionModel().select(drawing);
  }
}
