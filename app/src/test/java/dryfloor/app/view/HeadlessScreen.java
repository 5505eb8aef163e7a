package dryfloor.app.view;

import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;

/** A screen in memory, its mouse and its keys. */
final class HeadlessScreen implements AutoCloseable {

  private static final long PATIENCE = 90_000;
  private static boolean started;

  /** What nobody caught on the screen's thread. */
  private static final List<Throwable> BROKEN = new CopyOnWriteArrayList<>();

  /** How the windows of the tests look. */
  static final Looks LOOKS = new Looks();

  private final Stage stage;

  /** The same all the time: it knows which of its buttons are down. */
  private final Robot mouse = new Robot();

  private HeadlessScreen(Stage stage) {
    this.stage = stage;
  }

  /** Opens a window with a shipped drawing, as the program would. */
  static HeadlessScreen with(String scenario) {
    start();
    return onScreen(
        () -> {
          Stage stage = new Stage();
          Work work = new Work(drawing(scenario), Platform::runLater);
          stage.setScene(
              new Scene(
                  new MainWindow(work, LOOKS).root(),
                  ViewApplication.WIDTH,
                  ViewApplication.HEIGHT));
          stage.setOnHidden(hidden -> work.close());
          stage.show();
          return new HeadlessScreen(stage);
        });
  }

  /**
   * The same with the answer to one failure only, that is looked at: a large drawing is then there
   * soon.
   */
  static HeadlessScreen withOneFailure(String scenario, String failure) {
    start();
    Work work = onScreen(() -> new Work(drawing(scenario), Platform::runLater, never -> {}));
    HeadlessScreen screen =
        onScreen(
            () -> {
              Stage stage = new Stage();
              stage.setScene(
                  new Scene(
                      new MainWindow(work, LOOKS).root(),
                      ViewApplication.WIDTH,
                      ViewApplication.HEIGHT));
              stage.setOnHidden(hidden -> work.close());
              stage.show();
              work.choose(Optional.of(failure));
              work.answerAgain();
              return new HeadlessScreen(stage);
            });
    waitUntil("what is looked at is answered", () -> work.fresh().isPresent());
    onScreen(
        () -> {
          work.stopAnswering();
          return work;
        });
    return screen;
  }

  static Installation drawing(String scenario) {
    return switch (InstallationFile.read(Path.of("..", "scenarios", scenario))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems().toString());
    };
  }

  static synchronized void start() {
    if (!started) {
      Platform.startup(
          () -> {
            Platform.setImplicitExit(false);
            LOOKS.rule();
            Thread.currentThread()
                .setUncaughtExceptionHandler((thread, failure) -> BROKEN.add(failure));
          });
      started = true;
    }
  }

  /** Does something on the screen's own thread and brings back what came of it. */
  static <T> T onScreen(Callable<T> action) {
    if (Platform.isFxApplicationThread()) {
      throw new AssertionError("the screen's thread can't wait for itself");
    }
    CompletableFuture<T> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            done.complete(action.call());
          } catch (Exception | AssertionError failure) {
            done.completeExceptionally(failure);
          }
        });
    try {
      return done.get(PATIENCE, TimeUnit.MILLISECONDS);
    } catch (Exception failure) {
      throw new AssertionError("the screen did not answer", failure);
    }
  }

  /** Waits until every failure is answered, whatever is known before. */
  void waitForAnswers() {
    ListView<?> failures = find("failures", ListView.class);
    Label state = find("list-state", Label.class);
    waitUntil(
        "every failure is answered",
        () -> {
          int all = failures.getItems().size() - 1;
          return state.getText().equals(Words.of("list.shown", all, all));
        });
  }

  /** Waits until something is so. */
  static void waitUntil(String what, BooleanSupplier condition) {
    long end = System.currentTimeMillis() + PATIENCE;
    while (!onScreen(condition::getAsBoolean)) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("it never happened that " + what);
      }
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException interrupted) {
      throw new AssertionError(interrupted);
    }
  }

  Scene scene() {
    return stage.getScene();
  }

  /** The part of the window with this id. */
  <T extends Node> T find(String id, Class<T> kind) {
    Node found = onScreen(() -> scene().lookup("#" + id));
    if (found == null) {
      throw new AssertionError("nothing on the screen has the id " + id);
    }
    return kind.cast(found);
  }

  /** Clicks so far from the top left corner of a part. */
  void click(Node part, double x, double y) {
    onScreen(
        () -> {
          settle();
          var at = part.localToScreen(x, y);
          Robot robot = new Robot();
          robot.mouseMove(at);
          robot.mouseClick(MouseButton.PRIMARY);
          return at;
        });
  }

  /** Takes hold of a point of a part and pulls it in steps to another one, where it lets go. */
  void drag(Node part, Point2D from, Point2D to) {
    pull(part, from, to);
    release();
  }

  /** Takes hold of a point of a part and pulls it in steps to another one, without letting go. */
  void pull(Node part, Point2D from, Point2D to) {
    int steps = 8;
    onScreen(
        () -> {
          settle();
          mouse.mouseMove(part.localToScreen(from));
          mouse.mousePress(MouseButton.PRIMARY);
          return mouse;
        });
    for (int step = 1; step <= steps; step++) {
      Point2D at = from.interpolate(to, (double) step / steps);
      onScreen(
          () -> {
            mouse.mouseMove(part.localToScreen(at));
            return mouse;
          });
    }
  }

  void release() {
    onScreen(
        () -> {
          mouse.mouseRelease(MouseButton.PRIMARY);
          return mouse;
        });
  }

  /** Presses and lets go of a key while others are held. */
  void press(KeyCode key, KeyCode... held) {
    Keys.press(Stream.concat(Arrays.stream(held), Stream.of(key)).toArray(KeyCode[]::new));
  }

  /**
   * What was shown just now has no place yet, and a field takes no keys before it is laid out: both
   * come with the next picture, which a busy machine draws late.
   */
  static void settle() {
    for (Window window : List.copyOf(Window.getWindows())) {
      window.getScene().getRoot().applyCss();
      window.getScene().getRoot().layout();
    }
  }

  /** Closes a window; the platform keeps it in mind, which need not keep what it showed. */
  static void forget(Stage closed) {
    closed.close();
    closed.setScene(null);
  }

  /** Whatever a test looks at: nothing on the screen may have broken meanwhile. */
  static void assertNothingBroke() {
    List<Throwable> broken = List.copyOf(BROKEN);
    BROKEN.clear();
    if (!broken.isEmpty()) {
      throw new AssertionError("something broke on the screen", broken.getFirst());
    }
  }

  @Override
  public void close() {
    onScreen(
        () -> {
          forget(stage);
          return stage;
        });
    assertNothingBroke();
  }
}
