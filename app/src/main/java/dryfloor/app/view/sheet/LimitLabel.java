package dryfloor.app.view.sheet;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;

/** How far something can be changed; paler once the drawing is another one. */
final class LimitLabel extends Label {

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  LimitLabel(String text, boolean stale) {
    super(text);
    setWrapText(true);
    setMinHeight(USE_PREF_SIZE);
    getStyleClass().add("field-limit");
    pseudoClassStateChanged(STALE, stale);
  }
}
