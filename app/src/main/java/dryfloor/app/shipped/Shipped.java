package dryfloor.app.shipped;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Gets at what is packed into the program. */
final class Shipped {

  private Shipped() {}

  static byte[] bytes(String resource) {
    try (InputStream stream = Shipped.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException(resource + " is missing in the program");
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
