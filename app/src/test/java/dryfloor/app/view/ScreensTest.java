package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import dryfloor.app.view.time.TimeLine;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.value.ChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The screens in light and dark, with usual and with twice as large letters. */
class ScreensTest {

  @AfterEach
  void asItWas() {
    look(false, 14);
  }

  @Test
  void theSmallestDrawing() {
    lookAtEveryScreen("first-look", "as-drawn");
  }

  /** Of the largest drawing only what is looked at: all its failures take half a minute. */
  @Test
  void theLargestDrawingAtOneFailure() {
    try (HeadlessScreen screen =
        HeadlessScreen.withOneFailure("grand-hall/corrected.json", "wall-fails.lagoon")) {
      Label sentence = screen.find("sentence", Label.class);
      HeadlessScreen.waitUntil(
          "the story is told", () -> sentence.getText().contains("plant room floor"));
      for (double letters : new double[] {14, 28}) {
        for (boolean dark : new boolean[] {false, true}) {
          look(dark, letters);
          Screenshots.take(
              screen.scene(),
              "hall-" + (dark ? "dark-" : "light-") + (letters > 20 ? "200" : "100"));
        }
      }
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().getRoot().getStyle())).contains("28");
    }
  }

  /** With every failure, and played: ask for it with -Ddryfloor.screens. */
  @Test
  @EnabledIfSystemProperty(named = "dryfloor.screens", matches = ".*")
  void theLargestDrawing() {
    lookAtEveryScreen("grand-hall", "corrected");
  }

  private static void lookAtEveryScreen(String scenario, String state) {
    try (HeadlessScreen screen = HeadlessScreen.with(scenario + "/" + state + ".json")) {
      ListView<?> failures = screen.find("failures", ListView.class);
      screen.waitForAnswers();
      select(failures, 1);
      Label sentence = screen.find("sentence", Label.class);
      HeadlessScreen.waitUntil("the story is told", () -> sentence.getText().contains("floor"));
      play(screen, scenario, true);
      play(screen, scenario, false);
      ListView<?> story = screen.find("story", ListView.class);
      for (double letters : new double[] {14, 28}) {
        for (boolean dark : new boolean[] {false, true}) {
          look(dark, letters);
          String name = scenario + (dark ? "-dark-" : "-light-") + (letters > 20 ? "200" : "100");
          Screenshots.take(screen.scene(), name + "-end");
          select(story, 5);
          Screenshots.take(screen.scene(), name + "-moment");
          withChart(screen, name);
        }
      }
      assertThat(HeadlessScreen.onScreen(() -> screen.scene().getRoot().getStyle())).contains("28");
    }
  }

  /** Plays for a while and tells how often the picture moved. */
  private static void play(HeadlessScreen screen, String scenario, boolean still) {
    Button play = screen.find("play", Button.class);
    Label moment = screen.find("moment", Label.class);
    AtomicInteger moves = new AtomicInteger();
    ChangeListener<Number> count = (property, before, now) -> moves.incrementAndGet();
    TimeLine line = (TimeLine) play.getParent().getParent();
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.LOOKS.chooseStill(still);
          line.moment().addListener(count);
          play.fire();
          return play;
        });
    long worked = worked();
    long start = System.nanoTime();
    HeadlessScreen.waitUntil(
        "it plays for a while", () -> moves.get() > 4 && System.nanoTime() - start > 4e9);
    double seconds = (System.nanoTime() - start) / 1e9;
    double work = (worked() - worked) / 1e6 / Math.max(1, moves.get());
    HeadlessScreen.onScreen(
        () -> {
          play.fire();
          line.moment().removeListener(count);
          return moment;
        });
    System.out.printf(
        "%s%s plays at %.1f pictures a second, each %.0f ms of work for a processor%n",
        scenario, still ? " without motion" : "", moves.get() / seconds, work);
  }

  /** How long processors have worked for this program (ns). */
  private static long worked() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }

  private static void withChart(HeadlessScreen screen, String name) {
    TabPane tabs = screen.find("story-tabs", TabPane.class);
    HeadlessScreen.onScreen(
        () -> {
          tabs.getSelectionModel().select(1);
          tabs.applyCss();
          tabs.layout();
          ticks(tabs).stream().limit(3).forEach(tick -> tick.setSelected(true));
          return tabs;
        });
    Screenshots.take(screen.scene(), name + "-levels");
    HeadlessScreen.onScreen(
        () -> {
          ticks(tabs).forEach(tick -> tick.setSelected(false));
          tabs.getSelectionModel().select(2);
          return tabs;
        });
    Screenshots.take(screen.scene(), name + "-ways");
    HeadlessScreen.onScreen(
        () -> {
          tabs.getSelectionModel().select(0);
          return tabs;
        });
  }

  private static List<CheckBox> ticks(TabPane tabs) {
    return tabs.lookupAll(".check-box").stream().map(CheckBox.class::cast).toList();
  }

  private static void select(ListView<?> list, int index) {
    HeadlessScreen.onScreen(
        () -> {
          list.getSelectionModel().select(index);
          return list;
        });
  }

  private static void look(boolean dark, double letters) {
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.LOOKS.dark().set(dark);
          HeadlessScreen.LOOKS.letters().set(letters);
          return letters;
        });
  }
}
