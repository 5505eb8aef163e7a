package dryfloor.app.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** What tells one version of a file from every other: its SHA-256, as other tools show it too. */
public final class Fingerprint {

  private Fingerprint() {}

  /**
   * The fingerprint of what a file holds now.
   *
   * @throws IOException if it can't be read
   */
  public static String of(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("every Java has SHA-256", missing);
    }
  }
}
