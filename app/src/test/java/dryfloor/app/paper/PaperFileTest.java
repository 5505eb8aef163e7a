package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** Papers that are made beside each other. */
class PaperFileTest {

  @Test
  void whatIsBegunIsMadeBeforeAnybodyAsks() throws IOException, InterruptedException {
    CountDownLatch made = new CountDownLatch(1);
    try (ExecutorService makers = Executors.newFixedThreadPool(1)) {
      PaperFile begun =
          PaperFile.renewed(
                  ".marks",
                  ".pdf",
                  () -> {
                    made.countDown();
                    return new byte[] {7};
                  })
              .begun(makers);
      made.await();
      assertThat(begun.content().bytes()).containsExactly(7);
      assertThat(begun.name() + begun.extension()).isEqualTo(".marks.pdf");
    }
  }

  @Test
  void whatCantBeMadeSaysSoToWhoeverAsks() {
    try (ExecutorService makers = Executors.newFixedThreadPool(1)) {
      PaperFile begun =
          PaperFile.renewed(
                  ".marks",
                  ".pdf",
                  () -> {
                    throw new IOException("no room");
                  })
              .begun(makers);
      assertThatThrownBy(() -> begun.content().bytes())
          .isInstanceOf(IOException.class)
          .hasMessageContaining("no room");
    }
  }
}
