package dryfloor.app.view.panel;

import dryfloor.app.view.Words;
import dryfloor.app.view.work.Exploration;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Begins a search that takes long, shows how far it is, and gives it up. */
public final class SearchBar extends HBox {

  private final Button begin;
  private final ProgressBar bar = new ProgressBar();
  private final Button cancel = new Button(Words.of("search.cancel"));

  /**
   * A bar for a search.
   *
   * @param id of the button that begins it; that which gives it up is called the same with -cancel
   * @param words on the button that begins it
   * @param search begins it
   */
  public SearchBar(String id, String words, Exploration<?> exploration, Runnable search) {
    super(8);
    setAlignment(Pos.CENTER_LEFT);
    begin = new Button(words);
    begin.setId(id);
    begin.setWrapText(true);
    begin.setOnAction(event -> search.run());
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText(words);
    HBox.setHgrow(bar, Priority.ALWAYS);
    cancel.setId(id + "-cancel");
    cancel.setMinWidth(USE_PREF_SIZE);
    cancel.setOnAction(event -> exploration.cancel());
    exploration.state().addListener((state, before, now) -> show(now));
    show(exploration.state().get());
  }

  /** The button that begins it. */
  public Button begin() {
    return begin;
  }

  private void show(Exploration.State<?> state) {
    if (state instanceof Exploration.State.Working<?> working) {
      bar.setProgress(
          working.share() > 0 ? working.share() : ProgressIndicator.INDETERMINATE_PROGRESS);
      if (!getChildren().contains(cancel)) {
        boolean focused = hasKeys(begin);
        getChildren().setAll(bar, cancel);
        focus(focused, cancel);
      }
    } else if (!getChildren().contains(begin)) {
      boolean focused = hasKeys(cancel);
      getChildren().setAll(begin);
      focus(focused, begin);
    }
  }

  private static boolean hasKeys(Button button) {
    return Optional.ofNullable(button.getScene())
        .map(Scene::getFocusOwner)
        .filter(button::equals)
        .isPresent();
  }

  /** Whoever had the keys on one button has them on the one in its place. */
  private static void focus(boolean had, Button next) {
    if (had) {
      next.requestFocus();
    }
  }
}
