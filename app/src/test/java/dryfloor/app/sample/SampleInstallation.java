package dryfloor.app.sample;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The template that users begin with. */
public final class SampleInstallation {

  private SampleInstallation() {}

  /** The text of its file. */
  public static String text() {
    try (InputStream stream =
        Objects.requireNonNull(
            SampleInstallation.class.getResourceAsStream("/templates/cellar-sump.json"))) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The installation. */
  public static Installation get() {
    return of(text());
  }

  /** The installation that a file's text describes. */
  public static Installation of(String text) {
    return switch (InstallationFile.readText(text)) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected ->
          throw new AssertionError("the sample is wrong: " + rejected.problems());
    };
  }
}
