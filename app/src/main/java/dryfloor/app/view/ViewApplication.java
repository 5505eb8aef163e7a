package dryfloor.app.view;

import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The desktop program as its toolkit starts it. */
public final class ViewApplication extends Application {

  private static final double WIDTH = 1440;
  private static final double HEIGHT = 900;

  /** How every window of the program looks. */
  static final Looks LOOKS = new Looks();

  @Override
  public void start(Stage stage) {
    open(stage, View.first());
  }

  /** Shows a drawing in a window of its own. */
  static void open(Stage stage, Installation drawing) {
    LOOKS.useTheme();
    Work work = new Work(drawing, Platform::runLater);
    stage.setTitle(Words.of("window.title", drawing.name()));
    stage.setScene(new Scene(new MainWindow(work, LOOKS).root(), WIDTH, HEIGHT));
    stage.setOnHidden(hidden -> work.close());
    stage.show();
  }
}
