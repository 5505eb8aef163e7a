package dryfloor.analysis.band;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Team;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;

/**
 * Runs failures at points and remembers what came of it. What is done in one go is shared among
 * threads point by point, and remembered in the order in which it was asked for, so that nothing
 * hangs on which thread was quicker.
 */
final class Runs {

  private final Uncertain uncertain;
  private final List<Failure> failures;
  private final int threads;
  private final Progress progress;
  private final Map<Point, SortedMap<Integer, Figures>> known = new LinkedHashMap<>();
  private final Map<Point, BandResult.Unsound> unsound = new LinkedHashMap<>();
  private int done;

  /** What came of one point. */
  private record AtPoint(
      SortedMap<Integer, Figures> figures, Optional<BandResult.Unsound> unsound) {}

  Runs(Uncertain uncertain, List<Failure> failures, int threads, Progress progress) {
    this.uncertain = uncertain;
    this.failures = failures;
    this.threads = threads;
    this.progress = progress;
  }

  /** Runs everything as drawn, which has settled already. */
  void drawn(Inquiry inquiry) {
    Figures[] figures = new Figures[failures.size()];
    Team.share(figures.length, threads, counted(), i -> figures[i] = answer(inquiry, i));
    stopIfCancelled();
    SortedMap<Integer, Figures> all = new TreeMap<>();
    for (int i = 0; i < figures.length; i++) {
      all.put(i, figures[i]);
    }
    known.put(Point.asDrawn(uncertain.values()), all);
    done += figures.length;
  }

  /** Runs these failures at these points but for what is known; each failure is its place. */
  void run(Map<Point, ? extends SortedSet<Integer>> wanted) {
    List<Point> points = new ArrayList<>();
    List<List<Integer>> open = new ArrayList<>();
    wanted.forEach(
        (point, asked) -> {
          List<Integer> left = asked.stream().filter(i -> figures(point, i).isEmpty()).toList();
          if (!left.isEmpty() && !unsound.containsKey(point)) {
            points.add(point);
            open.add(left);
          }
        });
    AtPoint[] answers = new AtPoint[points.size()];
    Team.share(
        answers.length, threads, counted(), i -> answers[i] = at(points.get(i), open.get(i)));
    stopIfCancelled();
    for (int i = 0; i < answers.length; i++) {
      Point point = points.get(i);
      known.computeIfAbsent(point, first -> new TreeMap<>()).putAll(answers[i].figures());
      answers[i].unsound().ifPresent(why -> unsound.put(point, why));
    }
    done += answers.length;
  }

  private AtPoint at(Point point, List<Integer> asked) {
    try {
      Installation installation = uncertain.at(point);
      Inquiry inquiry = Inquiry.of(installation, progress::cancelled);
      SortedMap<Integer, Figures> figures = new TreeMap<>();
      asked.forEach(i -> figures.put(i, answer(inquiry, i)));
      return new AtPoint(figures, Optional.empty());
    } catch (Uncertain.NotDrawable fault) {
      return unsound(point, false, fault);
    } catch (BaselineProblem problem) {
      return unsound(point, true, problem);
    }
  }

  private static AtPoint unsound(Point point, boolean drawable, Exception why) {
    String reason = String.valueOf(why.getMessage());
    return new AtPoint(
        new TreeMap<>(), Optional.of(new BandResult.Unsound(point, drawable, reason)));
  }

  private Figures answer(Inquiry inquiry, int failure) {
    return Figures.of(inquiry.answer(List.of(failures.get(failure))));
  }

  private void stopIfCancelled() {
    if (progress.cancelled()) {
      throw new CancellationException("the search for bands was cancelled");
    }
  }

  /** How much is done of what is known to be needed so far. */
  private Progress counted() {
    int before = done;
    return new Progress() {
      @Override
      public void finished(int more, int of) {
        progress.finished(before + more, before + of);
      }

      @Override
      public boolean cancelled() {
        return progress.cancelled();
      }
    };
  }

  /** What a failure came to at a point, if it was run there and could be judged. */
  Optional<Figures> figures(Point point, int failure) {
    return Optional.ofNullable(known.getOrDefault(point, new TreeMap<>()).get(failure));
  }

  /** Every point, in the order in which it was first asked for. */
  List<Point> points() {
    return List.copyOf(known.keySet());
  }

  List<BandResult.Unsound> unsound() {
    return List.copyOf(unsound.values());
  }
}
