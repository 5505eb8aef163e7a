package dryfloor.app.view.panel;

import dryfloor.app.drawing.Scene;
import dryfloor.app.report.Answer;
import dryfloor.app.report.MovingScene;
import dryfloor.app.view.Words;
import dryfloor.app.view.time.Playback;
import dryfloor.app.view.work.Work;
import dryfloor.model.unit.Units;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The verdict in one sentence; what happened in order, the levels, and the ways of the water. */
public final class StoryPanel extends VBox {

  private final Work work;
  private final Label verdict = wrapped("verdict");
  private final Label title = wrapped("shown");
  private final Label sentence = wrapped("sentence");
  private final StoryList story;
  private final LevelTable levels;
  private final WayList ways;
  private final TabPane tabs;

  /** Brings the levels and ways up to the moment; left undone while nobody sees them. */
  private Runnable showVisible = () -> {};

  /** An empty story. */
  public StoryPanel(Work work, Playback playback, ObservableValue<Units> units) {
    super(8);
    this.work = work;
    story = new StoryList(work, playback);
    levels = new LevelTable(work);
    ways = new WayList();
    verdict.getStyleClass().add("title-3");
    title.getStyleClass().add("text-bold");
    tabs =
        new TabPane(
            tab("story.title", story),
            tab("story.levels", levels),
            tab("story.ways", ways),
            tab("mends.title", new MendsPanel(work, units)),
            tab("bands.title", new BandsPanel(work, units)));
    tabs.setId("story-tabs");
    tabs.setAccessibleText(Words.of("story.spoken"));
    tabs.getSelectionModel()
        .selectedItemProperty()
        .addListener((tab, before, now) -> showVisible.run());
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    VBox.setVgrow(tabs, Priority.ALWAYS);
    getChildren().addAll(verdict, title, sentence, tabs);
  }

  private static Label wrapped(String id) {
    Label label = new Label();
    label.setId(id);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private static Tab tab(String key, Region content) {
    return new Tab(Words.of(key), content);
  }

  /** Tells a failure from its beginning to its end. */
  public void show(MovingScene film, Answer word) {
    Scene end = film.end();
    verdict.setText(end.sign() + " " + word.word());
    FailureCell.dress(verdict, word);
    title.setText(end.subtitle());
    String told = end.sentence();
    sentence.setText(
        told.startsWith(word.word() + ": ")
            ? capital(told.substring(word.word().length() + 2))
            : told);
    story.show(film.story());
    levels.show(film);
  }

  private static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** Tells why there is no story. */
  public void show(MovingScene normal, Answer word, String failure, String reason) {
    verdict.setText(word.sign(true) + " " + word.word());
    FailureCell.dress(verdict, word);
    title.setText(failure);
    sentence.setText(reason);
    story.show(List.of());
    levels.show(normal);
  }

  /** Tells how things stand at the moment that is looked at. */
  public void showMoment(Scene now, MovingScene film) {
    showVisible =
        () -> {
          levels.showMoment(film);
          ways.show(now, film, Double.isInfinite(work.moment().get()));
        };
    if (!story.equals(tabs.getSelectionModel().getSelectedItem().getContent())) {
      showVisible.run();
    }
  }

  /** The vessels whose levels are to be seen over time. */
  public LevelTable levels() {
    return levels;
  }

  /** What happened. */
  public StoryList story() {
    return story;
  }
}
