package dryfloor.app.command;

import dryfloor.analysis.sweep.Progress;
import dryfloor.app.report.Ink;
import java.util.Optional;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A progress bar on the error output, for whoever watches a terminal, and nothing otherwise. */
final class WatchedProgress implements Progress, AutoCloseable {

  private static final int REFRESH_MILLISECONDS = 100;

  private final Optional<ProgressBar> bar;

  WatchedProgress(String task, Surface surface) {
    bar = surface.progressShows() ? Optional.of(bar(task, surface)) : Optional.empty();
  }

  private static ProgressBar bar(String task, Surface surface) {
    return new ProgressBarBuilder()
        .setTaskName(task)
        .setInitialMax(-1)
        .setUpdateIntervalMillis(REFRESH_MILLISECONDS)
        .setStyle(style(surface.errInk()))
        .clearDisplayOnFinish()
        .build();
  }

  private static ProgressBarStyle style(Ink ink) {
    if (!ink.manyCharacters()) {
      return ProgressBarStyle.ASCII;
    }
    return ink.colour() ? ProgressBarStyle.COLORFUL_UNICODE_BLOCK : ProgressBarStyle.UNICODE_BLOCK;
  }

  @Override
  public void finished(int done, int of) {
    bar.ifPresent(shown -> shown.maxHint(of).stepTo(done));
  }

  @Override
  public boolean cancelled() {
    return false;
  }

  @Override
  public void close() {
    bar.ifPresent(ProgressBar::close);
  }
}
