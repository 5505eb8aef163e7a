package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The sample files that all tests share. */
final class SampleFiles {

  static final String DISPLAY_ABOVE_SUMP = "display-above-sump.json";

  /** Every form of every object, in mixed units. */
  static final String EVERY_FORM = "every-form.json";

  private SampleFiles() {}

  static String text(String name) {
    try (InputStream in = SampleFiles.class.getResourceAsStream("/installations/" + name)) {
      assertThat(in).as(name).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }

  static Installation read(String text) {
    Reading reading = InstallationFile.readText(text);
    if (reading instanceof Reading.Read read) {
      return read.installation();
    }
    throw new AssertionError(reading);
  }
}
