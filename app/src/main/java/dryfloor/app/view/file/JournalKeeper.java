package dryfloor.app.view.file;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationWriter;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Writes what is unsaved into a journal, at most {@link #DELAY} after it changed and beside the
 * screen, so that neither a hand that drags nor a slow disk waits for the other.
 */
public final class JournalKeeper implements AutoCloseable {

  /** From a change to its journal (ms), well below a second. */
  public static final long DELAY = 400;

  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().name("journal").factory());

  private final Executor later =
      CompletableFuture.delayedExecutor(DELAY, TimeUnit.MILLISECONDS, this::unlessClosed);

  private final AtomicReference<Optional<Supplier<Unsaved>>> waiting =
      new AtomicReference<>(Optional.empty());

  private final Journal journal;
  private final Consumer<Exception> trouble;

  /**
   * Keeps a journal.
   *
   * @param trouble is told, on another thread, when something can't be kept
   */
  public JournalKeeper(Journal journal, Consumer<Exception> trouble) {
    this.journal = journal;
    this.trouble = trouble;
  }

  /** To be told of every change; the last one within {@link #DELAY} is written. */
  public void changed(DrawingFile file, Installation drawing) {
    changed(
        () ->
            new Unsaved(file.path(), file.stamp(), InstallationWriter.text(drawing, file.units())));
  }

  /** The same for anything else that a file does not hold yet; it is put into words later. */
  public void changed(Supplier<Unsaved> unsaved) {
    boolean coming = waiting.getAndSet(Optional.of(unsaved)).isPresent();
    if (!coming) {
      later.execute(this::writeWaiting);
    }
  }

  /** Nothing is unsaved any more. */
  public void saved() {
    waiting.set(Optional.empty());
    writer.execute(
        () -> {
          try {
            if (waiting.get().isEmpty()) {
              journal.clear();
            }
          } catch (IOException e) {
            trouble.accept(e);
          }
        });
  }

  private void unlessClosed(Runnable work) {
    try {
      writer.execute(work);
    } catch (RejectedExecutionException closed) {
      // Closing has written all that waited.
    }
  }

  private void writeWaiting() {
    waiting.getAndSet(Optional.empty()).ifPresent(this::write);
  }

  private void write(Supplier<Unsaved> unsaved) {
    try {
      journal.write(unsaved.get());
    } catch (IOException | RuntimeException e) {
      trouble.accept(e);
    }
  }

  /** Writes what still waits and lets go of the journal. */
  @Override
  public void close() {
    writer.execute(this::writeWaiting);
    writer.execute(
        () -> {
          try {
            journal.close();
          } catch (IOException e) {
            trouble.accept(e);
          }
        });
    writer.shutdown();
    try {
      writer.awaitTermination(5, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
