package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is seen goes to files of other kinds. */
class ExportOnScreenTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void theFailureThatIsSeenIsWrittenAsPictureAndValues() throws IOException {
    Path svg = folder.resolve("a.svg");
    Path png = folder.resolve("a.png");
    Path csv = folder.resolve("a.csv");
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.empty())) {
      screen.waitForAnswers();
      DrawingWindow window = screen.window();
      Exporter exporter = screen.exporter();
      HeadlessScreen.onScreen(
          () -> {
            window.work().choose(Optional.of("power-lost.building"));
            screen.answering(svg);
            exporter.svg();
            screen.answering(png);
            exporter.png();
            screen.answering(csv);
            exporter.csv();
            return window;
          });

      screen.waitForNotice("export", "a.csv is written");
      assertThat(screen.offeredName()).endsWith(".power-lost.building.csv");
      assertThat(Files.readString(svg)).contains("<svg").contains("Power lost");
      assertThat(Files.readString(csv)).contains("Power lost").contains("\r\nvessel,");
      BufferedImage picture = ImageIO.read(png.toFile());
      assertThat(picture.getWidth()).isGreaterThan(1000);
      assertThat(coloursIn(picture)).isGreaterThan(20);
      Files.copy(
          png,
          Files.createDirectories(Path.of("target", "screens")).resolve("export.png"),
          StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static long coloursIn(BufferedImage picture) {
    return Arrays.stream(
            picture.getRGB(
                0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth()))
        .distinct()
        .count();
  }
}
