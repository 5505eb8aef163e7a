package dryfloor.app.view.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file held when it was last looked at, to notice that somebody else has written it since.
 * Times can't tell: two writes may fall into one tick of the disk's clock.
 *
 * @param digest of its bytes; empty where there was no file
 */
public record Stamp(String digest) {

  /** Of a file that is not there. */
  public static final Stamp MISSING = new Stamp("");

  /** What the file holds now. */
  public static Stamp of(Path file) throws IOException {
    try {
      return of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return MISSING;
    }
  }

  /** What a file with this text would hold. */
  public static Stamp ofText(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Stamp of(byte[] bytes) {
    try {
      return new Stamp(
          HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
