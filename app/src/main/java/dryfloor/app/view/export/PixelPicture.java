package dryfloor.app.view.export;

import dryfloor.app.drawing.Elevation;
import dryfloor.app.view.picture.PictureView;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;

/** An elevation as pixels. */
public final class PixelPicture {

  /** Pixels for each point of the paper, so that a print stays sharp. */
  private static final double SHARPNESS = 2;

  /** More pixels than these on one side would take memory that nobody expects. */
  private static final double MOST_PIXELS = 6000;

  private PixelPicture() {}

  /** Paints the elevation; to be called by the screen's thread. */
  public static WritableImage paint(Elevation elevation) {
    double longest = Math.max(elevation.width(), elevation.height());
    double scale = Math.min(SHARPNESS, MOST_PIXELS / longest);
    double width = Math.ceil(scale * elevation.width());
    double height = Math.ceil(scale * elevation.height());
    PictureView picture = new PictureView();
    picture.resize(width, height);
    picture.show(elevation.shapes(), elevation.width(), elevation.height());
    Scene surface = new Scene(picture, width, height, Color.WHITE);
    return surface.snapshot(null);
  }

  /** The bytes of a PNG file. */
  public static byte[] png(WritableImage image) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image
          .getPixelReader()
          .getPixels(0, y, width, 1, PixelFormat.getIntArgbInstance(), row, 0, width);
      copy.setRGB(0, y, width, 1, row, 0, width);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(copy, "png", bytes)) {
        throw new IllegalStateException("this Java can't write PNG");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
