package dryfloor.analysis.sweep;

import dryfloor.analysis.simulation.NoAnswer;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Threads that share a list of tasks; each task is done by one of them, alone. */
public final class Team {

  private Team() {}

  /**
   * Does the tasks 0 to {@code tasks - 1} and comes back when all are done, or when the progress
   * says that it is cancelled; those begun are then finished, the others left. What a task throws
   * ends the work likewise, and is thrown here, whichever thread had the task.
   *
   * @param threads to use, the calling one among them
   * @throws NoAnswer if it is interrupted
   */
  public static void share(int tasks, int threads, Progress progress, IntConsumer task) {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    AtomicReference<@Nullable Throwable> thrown = new AtomicReference<>();
    Runnable work =
        () -> {
          try {
            for (int i = next.getAndIncrement();
                i < tasks && thrown.get() == null && !progress.cancelled();
                i = next.getAndIncrement()) {
              task.accept(i);
              progress.finished(done.incrementAndGet(), tasks);
            }
          } catch (RuntimeException | Error failure) {
            thrown.compareAndSet(null, failure);
          }
        };
    List<Thread> others =
        IntStream.range(1, Math.min(threads, tasks))
            .mapToObj(i -> Thread.ofPlatform().daemon().name("sweep-" + i).start(work))
            .toList();
    work.run();
    others.forEach(Team::join);
    Throwable failure = thrown.get();
    if (failure instanceof Error error) {
      throw error;
    }
    if (failure instanceof RuntimeException exception) {
      throw exception;
    }
  }

  private static void join(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new NoAnswer("it was interrupted");
    }
  }
}
