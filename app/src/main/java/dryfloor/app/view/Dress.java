package dryfloor.app.view;

import javafx.scene.Parent;

/** Gives a part that fills a window the letters and styles of the program. */
final class Dress {

  private Dress() {}

  /** Now and whenever the looks change. */
  static void of(Parent whole, Looks looks) {
    whole.getStylesheets().add(Dress.class.getResource("view.css").toExternalForm());
    looks
        .letters()
        .subscribe(letters -> whole.setStyle("-fx-font-size: " + letters.doubleValue() + "px;"));
    // The looks of a part are known as long as somebody holds them.
    whole.getProperties().put(Looks.class, looks);
  }
}
