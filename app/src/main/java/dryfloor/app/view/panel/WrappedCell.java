package dryfloor.app.view.panel;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A line of a list that is as high as its text needs, whatever the width. */
abstract class WrappedCell<T> extends ListCell<T> {

  /** Room for a scroll bar (points). */
  private static final double SCROLL_BAR = 20;

  private final VBox content = new VBox(2);

  /** What the content was made for. */
  private Optional<T> made = Optional.empty();

  WrappedCell() {
    setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    setPrefWidth(0);
    content.setMinWidth(0);
    content.prefWidthProperty().bind(widthProperty().subtract(SCROLL_BAR));
  }

  /** What a line shows, from the top down. */
  protected abstract List<Region> parts(T item);

  /** What a line says to those who do not see it. */
  protected abstract String spoken(T item);

  protected static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  @Override
  protected void updateItem(@Nullable T item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
      setAccessibleText("");
      made = Optional.empty();
      return;
    }
    if (!made.equals(Optional.of(item))) {
      made = Optional.of(item);
      content.getChildren().setAll(parts(item));
      setAccessibleText(spoken(item));
    }
    setGraphic(content);
  }

  @Override
  protected double computePrefHeight(double width) {
    if (getGraphic() == null) {
      return super.computePrefHeight(width);
    }
    double wide =
        Math.max(
            1, getListView().getWidth() - SCROLL_BAR - snappedLeftInset() - snappedRightInset());
    return content.prefHeight(wide) + snappedTopInset() + snappedBottomInset();
  }
}
