package dryfloor.app.view;

import dryfloor.app.view.panel.Notices;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Window;

/** The program on a screen in memory, with a user who knows which file they mean. */
final class FileScreen implements AutoCloseable {

  private final Program program;
  private final Answerer answerer = new Answerer();

  private FileScreen(Path settings) {
    program = new Program(settings, answerer);
  }

  /** Answers the next questions for files. */
  private static final class Answerer implements FileQuestions {
    private Optional<Path> answer = Optional.empty();
    private String offered = "";

    @Override
    public Optional<Path> toOpen(Window owner, Optional<Path> near) {
      return answer;
    }

    @Override
    public Optional<Path> toWrite(Window owner, Kind kind, String name, Optional<Path> near) {
      offered = name;
      return answer;
    }

    @Override
    public Optional<Path> toFill(Window owner, Optional<Path> near) {
      return answer;
    }
  }

  /** Starts the program with settings in this folder. */
  static FileScreen started(Path settings, Optional<Path> file) {
    HeadlessScreen.start();
    return HeadlessScreen.onScreen(
        () -> {
          FileScreen screen = new FileScreen(settings);
          screen.program.start(file);
          return screen;
        });
  }

  /** What the user answers when asked for a file. */
  FileScreen answering(Path path) {
    answerer.answer = Optional.of(path);
    return this;
  }

  String offeredName() {
    return answerer.offered;
  }

  List<DrawingWindow> windows() {
    return HeadlessScreen.onScreen(program::windows);
  }

  DrawingWindow window() {
    return windows().getFirst();
  }

  /** Waits until something is so of the first window. */
  void waitUntil(String what, Predicate<DrawingWindow> condition) {
    DrawingWindow window = window();
    HeadlessScreen.waitUntil(what, () -> condition.test(window));
  }

  void waitForTitle(Predicate<String> condition) {
    waitUntil("the title is another", window -> condition.test(window.stage().getTitle()));
  }

  void waitForAnswers() {
    waitUntil(
        "there are answers",
        window -> !window.work().isStale() && window.work().answers().get().isWhole());
  }

  void waitForWindows(int number) {
    HeadlessScreen.waitUntil("windows: " + number, () -> program.windows().size() == number);
  }

  String title() {
    DrawingWindow window = window();
    return HeadlessScreen.onScreen(() -> window.stage().getTitle());
  }

  /** Changes the name of the drawing, as an editor would. */
  void rename(String name) {
    DrawingWindow window = window();
    HeadlessScreen.onScreen(
        () -> {
          window.work().change(window.drawing().withName(name));
          return name;
        });
  }

  /** What is said under this id; empty where nothing is. */
  String notice(String id) {
    Notices notices = window().notices();
    return HeadlessScreen.onScreen(() -> said(notices, id));
  }

  private static String said(Notices notices, String id) {
    return notices.lookup("#notice-" + id + "-text") instanceof Label label ? label.getText() : "";
  }

  void waitForNotice(String id, String part) {
    Notices notices = window().notices();
    HeadlessScreen.waitUntil("it says " + part, () -> said(notices, id).contains(part));
  }

  /** Clicks a choice of a notice, the first being 1. */
  void choose(String id, int number) {
    click(window().stage().getScene(), "notice-" + id + "-" + number);
  }

  /** Clicks a part of a window. */
  void click(Scene scene, String id) {
    HeadlessScreen.onScreen(
        () -> {
          Node part = scene.lookup("#" + id);
          if (part == null) {
            throw new AssertionError("nothing on the screen has the id " + id);
          }
          HeadlessScreen.settle();
          var at = part.localToScreen(8, 8);
          Robot robot = new Robot();
          robot.mouseMove(at);
          robot.mouseClick(MouseButton.PRIMARY);
          return at;
        });
  }

  static boolean has(Scene scene, String id) {
    return HeadlessScreen.onScreen(() -> scene.lookup("#" + id) != null);
  }

  static void waitFor(Scene scene, String id) {
    HeadlessScreen.waitUntil(
        "there is " + id,
        () -> {
          // Keys reach a button only once it has its looks.
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          return scene.lookup("#" + id) != null;
        });
  }

  Exporter exporter() {
    return new Exporter(program, window());
  }

  /** Ends the program as a power cut would: nothing is saved, its windows are gone. */
  @Override
  public void close() {
    HeadlessScreen.onScreen(
        () -> {
          List<DrawingWindow> open = List.copyOf(program.windows());
          open.forEach(DrawingWindow::closeNow);
          program.close();
          open.forEach(window -> HeadlessScreen.forget(window.stage()));
          return program;
        });
    HeadlessScreen.assertNothingBroke();
  }
}
