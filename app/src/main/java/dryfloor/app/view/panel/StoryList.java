package dryfloor.app.view.panel;

import dryfloor.app.report.StoryDigest;
import dryfloor.app.view.Words;
import dryfloor.app.view.time.Playback;
import dryfloor.app.view.work.Work;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Region;

/**
 * What happened, in order. The present sentence is selected as time goes on; selecting one goes to
 * its moment.
 */
public final class StoryList extends ListView<StoryDigest.Moment> {

  private final Work work;
  private final Playback playback;
  private boolean following;

  StoryList(Work work, Playback playback) {
    this.work = work;
    this.playback = playback;
    setId("story");
    getStyleClass().add("story-list");
    setAccessibleText(Words.of("story.title"));
    setPlaceholder(new Label(Words.of("story.nothing")));
    setCellFactory(list -> new Cell());
    getSelectionModel()
        .selectedItemProperty()
        .addListener((item, before, now) -> Optional.ofNullable(now).ifPresent(this::goTo));
    work.moment().addListener((moment, before, now) -> follow());
  }

  /** The sentence that is told now, or none. */
  public ReadOnlyObjectProperty<StoryDigest.Moment> told() {
    return getSelectionModel().selectedItemProperty();
  }

  void show(List<StoryDigest.Moment> story) {
    following = true;
    getItems().setAll(story);
    getSelectionModel().clearSelection();
    following = false;
    follow();
  }

  private void goTo(StoryDigest.Moment moment) {
    if (!following) {
      playback.goTo(moment.event().time());
    }
  }

  private void follow() {
    double now = work.moment().get();
    Optional<StoryDigest.Moment> chosen =
        Optional.ofNullable(getSelectionModel().getSelectedItem());
    if (chosen.filter(moment -> moment.event().time() == now).isPresent()) {
      return;
    }
    following = true;
    select(now);
    following = false;
  }

  private void select(double now) {
    int last = -1;
    for (int i = 0; i < getItems().size() && !Double.isInfinite(now); i++) {
      last = getItems().get(i).event().time() <= now ? i : last;
    }
    if (last < 0) {
      getSelectionModel().clearSelection();
    } else if (last != getSelectionModel().getSelectedIndex()) {
      getSelectionModel().select(last);
      scrollTo(Math.max(0, last - 2));
    }
  }

  /** A sentence with its time above it. */
  private static final class Cell extends WrappedCell<StoryDigest.Moment> {

    @Override
    protected List<Region> parts(StoryDigest.Moment moment) {
      Label time = new Label(moment.time());
      time.getStyleClass().add("story-time");
      return List.of(time, wrapped(moment.sentence()));
    }

    @Override
    protected String spoken(StoryDigest.Moment moment) {
      return moment.time() + ": " + moment.sentence();
    }
  }
}
