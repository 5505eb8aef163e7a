package dryfloor.app.view;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Reads and writes files beside the screen, one after the other in the order asked for. */
final class FileWork implements AutoCloseable {

  /** A slow disk gets so long to finish before the program ends (s). */
  private static final long PATIENCE = 30;

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().name("files").factory());

  private final Executor screen;

  FileWork(Executor screen) {
    this.screen = screen;
  }

  /** Does something with files and brings what came of it to the screen. */
  <T> void run(Supplier<T> work, Consumer<T> done) {
    worker.execute(
        () -> {
          T result = work.get();
          screen.execute(() -> done.accept(result));
        });
  }

  /** Finishes what was begun. */
  @Override
  public void close() {
    worker.shutdown();
    try {
      worker.awaitTermination(PATIENCE, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
