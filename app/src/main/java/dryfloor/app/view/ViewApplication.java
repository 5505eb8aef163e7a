package dryfloor.app.view;

import atlantafx.base.theme.PrimerLight;
import dryfloor.app.view.file.SettingsFolder;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The desktop program as its toolkit starts it. */
public final class ViewApplication extends Application {

  static final double WIDTH = 1440;
  static final double HEIGHT = 900;

  private Optional<Program> program = Optional.empty();

  @Override
  public void start(Stage stage) {
    Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
    Path settings =
        SettingsFolder.of(
            System.getenv(),
            System.getProperty("os.name", ""),
            Path.of(System.getProperty("user.home", "")));
    Program started = new Program(settings, new SystemFileQuestions());
    program = Optional.of(started);
    Breakdowns.tellThrough(started);
    started.start(View.first());
  }

  @Override
  public void stop() {
    program.ifPresent(Program::close);
  }

  /** Shows a drawing in a window of its own, without any file. */
  static void open(Stage stage, Installation drawing) {
    Work work = new Work(drawing, Platform::runLater);
    stage.setTitle(Words.of("window.title", drawing.name()));
    stage.setScene(new Scene(new MainWindow(work).root(), WIDTH, HEIGHT));
    stage.setOnHidden(hidden -> work.close());
    stage.show();
  }
}
