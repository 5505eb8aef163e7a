package dryfloor.app.view.time;

import dryfloor.app.report.MovingScene;
import dryfloor.app.report.StoryDigest;
import dryfloor.app.report.TimeScale;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import java.util.List;
import java.util.function.DoubleFunction;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Under the picture: play and pause, from event to event, and the line to drag along. */
public final class TimeLine extends VBox {

  /** So short a play (s) needs a scale all the same. */
  private static final double SHORTEST = 1;

  private final Work work;
  private final Playback playback;
  private final Track track;
  private final Button play = new Button();
  private final Label moment = new Label();
  private final Label event = new Label();
  private List<StoryDigest.Moment> story = List.of();
  private String end = "";
  private DoubleFunction<String> spoken = Double::toString;

  /** The time of what this window works on. */
  public TimeLine(Work work, Playback playback) {
    this.work = work;
    this.playback = playback;
    this.track = new Track(playback);
    track.setAccessibleText(Words.of("time.track.empty"));
    moment.setId("moment");
    moment.getStyleClass().add("text-bold");
    moment.setMinWidth(Region.USE_PREF_SIZE);
    event.setId("moment-event");
    play.setId("play");
    play.setOnAction(clicked -> playback.playOrPause());
    playback.playing().addListener((playing, before, now) -> showPlay(now));
    showPlay(false);
    HBox buttons =
        new HBox(
            6,
            play,
            button("previous-event", "\u25C0|", "time.previous", playback::previous),
            button("next-event", "|\u25B6", "time.next", playback::next),
            button(
                "end", "\u25B6\u25B6|", "time.end", () -> playback.goTo(Double.POSITIVE_INFINITY)),
            moment,
            event);
    buttons.setAlignment(Pos.CENTER_LEFT);
    buttons.setPadding(new Insets(6, 12, 0, 12));
    getChildren().addAll(buttons, track);
    work.moment().addListener((property, before, now) -> showMoment());
  }

  private static Button button(String id, String sign, String words, Runnable action) {
    Button button = new Button(sign);
    button.setId(id);
    button.setAccessibleText(Words.of(words));
    button.setTooltip(new Tooltip(Words.of(words)));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(clicked -> action.run());
    return button;
  }

  private void showPlay(boolean playing) {
    play.setText(
        playing ? "\u2758\u2758 " + Words.of("time.pause") : "\u25B6 " + Words.of("time.play"));
    play.setAccessibleText(Words.of(playing ? "time.pause" : "time.play"));
    play.setMinWidth(Region.USE_PREF_SIZE);
  }

  /** The scale on which a failure is shown. */
  static TimeScale scale(MovingScene film) {
    return new TimeScale(Math.max(film.duration(), SHORTEST));
  }

  /** Puts a failure on the line. */
  public void show(MovingScene film) {
    TimeScale scale = scale(film);
    story = film.story();
    spoken = film.wording().amounts()::time;
    end = Words.of("time.at.end", spoken.apply(film.duration()));
    List<Double> times = story.stream().map(told -> told.event().time()).distinct().toList();
    playback.use(scale, times);
    track.show(scale, times);
    showMoment();
  }

  /** The moment that it shows (s after the failure); infinite for the end. */
  public ReadOnlyDoubleProperty moment() {
    return work.moment();
  }

  private void showMoment() {
    double now = work.moment().get();
    track.show(now);
    boolean isEnd = Double.isInfinite(now);
    moment.setText(isEnd ? end : Words.of("time.at", spoken.apply(now)));
    event.setText(
        isEnd
            ? ""
            : story.stream()
                .filter(told -> told.event().time() <= now)
                .reduce((a, b) -> b)
                .map(StoryDigest.Moment::sentence)
                .orElse(""));
    track.setAccessibleText(Words.of("time.track", moment.getText()));
  }
}
