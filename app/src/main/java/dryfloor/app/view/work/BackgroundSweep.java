package dryfloor.app.view.work;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;

/**
 * Answers every failure of the drawing that was asked about last, beside the screen. A new question
 * ends the one before it at once: nobody waits for an answer that is stale already.
 */
final class BackgroundSweep implements AutoCloseable {

  /** What is known so far is shown so often (ns); a shorter work shows all of it at once. */
  private static final long BETWEEN_PARTS = 2_000_000_000;

  /** How far it is is told so often (ns): each time the screen lays itself out anew. */
  private static final long BETWEEN_SHARES = 50_000_000;

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().name("answers").factory());

  private final AtomicInteger questions = new AtomicInteger();
  private final Executor screen;
  private final Consumer<Answers> answered;
  private final Consumer<Answers.Known> ahead;
  private final DoubleConsumer progress;

  /**
   * Answers in the background.
   *
   * @param screen runs what changes the screen
   * @param answered takes each answer there
   * @param ahead takes there the answer to the failure that is asked first, before all others
   * @param progress takes there how far it is, from 0 to 1, and 1 when nothing is worked on
   */
  BackgroundSweep(
      Executor screen,
      Consumer<Answers> answered,
      Consumer<Answers.Known> ahead,
      DoubleConsumer progress) {
    this.ahead = ahead;
    this.progress = progress;
    this.screen = screen;
    this.answered = answered;
  }

  /**
   * Asks for all failures of a drawing.
   *
   * @param first id of the failure that somebody looks at; none for normal operation
   */
  void ask(Installation installation, Optional<String> first) {
    int question = questions.incrementAndGet();
    tell(question, 0);
    worker.execute(() -> answer(question, installation, first));
  }

  private void answer(int question, Installation installation, Optional<String> first) {
    if (!isAsked(question)) {
      return;
    }
    try {
      Answers answers = answers(question, installation, first);
      screen.execute(
          () -> {
            if (isAsked(question)) {
              progress.accept(1);
              answered.accept(answers);
            }
          });
    } catch (CancellationException overtaken) {
      // The next question waits already.
    }
  }

  private void tell(int question, double share) {
    screen.execute(
        () -> {
          if (isAsked(question)) {
            progress.accept(share);
          }
        });
  }

  /** Gives up what is being worked on; what was known before stays. */
  void stop() {
    tell(questions.incrementAndGet(), 1);
  }

  private boolean isAsked(int question) {
    return questions.get() == question;
  }

  private Answers answers(int question, Installation installation, Optional<String> first) {
    List<Finding> errors =
        DrawingCheck.check(installation).stream().filter(Finding::isError).toList();
    if (!errors.isEmpty()) {
      return new Answers.Faulty(installation, errors);
    }
    try {
      int threads = Runtime.getRuntime().availableProcessors();
      Watch watch = new Watch(question, installation);
      Inquiry inquiry = Inquiry.of(installation, watch::cancelled);
      goAhead(question, inquiry, first);
      return new Answers.Known(Sweep.everyFailure(inquiry, threads, watch));
    } catch (BaselineProblem problem) {
      return new Answers.Unsettled(installation, String.valueOf(problem.getMessage()));
    }
  }

  /** The inquiry keeps what it has answered, so that nothing is worked out twice. */
  private void goAhead(int question, Inquiry inquiry, Optional<String> first) {
    List<Failure> failures = FailureCatalogue.of(inquiry.installation());
    List<FailureResult> looked =
        failures.stream()
            .filter(failure -> first.equals(Optional.of(FailureNames.id(failure))))
            .map(inquiry::answerUnlessSkipped)
            .toList();
    SweepResult soFar = new SweepResult(inquiry.installation(), inquiry.normal(), looked);
    Answers.Known known = new Answers.Known(soFar, failures.size() - looked.size());
    screen.execute(
        () -> {
          if (isAsked(question)) {
            ahead.accept(known);
          }
        });
  }

  /**
   * Tells how far a question is, and on long work what is known so far; ends it when another
   * question is asked.
   */
  private final class Watch implements Progress {

    private final int question;
    private final Installation installation;
    private final List<FailureResult> known = new ArrayList<>();
    private Optional<Outcome> normal = Optional.empty();
    private long told = System.nanoTime();
    private long toldShare = System.nanoTime();

    Watch(int question, Installation installation) {
      this.question = question;
      this.installation = installation;
    }

    @Override
    public synchronized void settled(Outcome outcome) {
      normal = Optional.of(outcome);
    }

    @Override
    public synchronized void answered(FailureResult result) {
      known.add(result);
    }

    @Override
    public synchronized void finished(int done, int of) {
      long now = System.nanoTime();
      if (now - toldShare > BETWEEN_SHARES) {
        toldShare = now;
        tell(question, (double) done / (of + 1));
      }
      if (now - told > BETWEEN_PARTS && done < of) {
        told = now;
        normal.ifPresent(outcome -> show(new SweepResult(installation, outcome, known), of - done));
      }
    }

    private void show(SweepResult soFar, int outstanding) {
      screen.execute(
          () -> {
            if (isAsked(question)) {
              answered.accept(new Answers.Known(soFar, outstanding));
            }
          });
    }

    @Override
    public boolean cancelled() {
      return !isAsked(question);
    }
  }

  /** Ends what is being worked on. */
  @Override
  public void close() {
    questions.incrementAndGet();
    worker.shutdown();
  }
}
