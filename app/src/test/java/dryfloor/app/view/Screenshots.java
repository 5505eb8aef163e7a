package dryfloor.app.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Pictures of the screens, in the build folder, for people to look at. */
final class Screenshots {

  private static final Path FOLDER = Path.of("target", "screens");

  private Screenshots() {}

  static void take(Scene scene, String name) {
    WritableImage image = HeadlessScreen.onScreen(() -> scene.snapshot(null));
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image
          .getPixelReader()
          .getPixels(
              0, y, width, 1, javafx.scene.image.PixelFormat.getIntArgbInstance(), row, 0, width);
      picture.setRGB(0, y, width, 1, row, 0, width);
    }
    try {
      Files.createDirectories(FOLDER);
      ImageIO.write(picture, "png", FOLDER.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
