package dryfloor.app.view;

import dryfloor.app.view.file.SettingsFolder;
import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;
import javafx.stage.Stage;

/** The desktop program as its toolkit starts it. */
public final class ViewApplication extends Application {

  static final double WIDTH = 1440;
  static final double HEIGHT = 900;

  private Optional<Program> program = Optional.empty();

  @Override
  public void start(Stage stage) {
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
}
