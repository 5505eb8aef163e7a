package dryfloor.app.paper;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** How pages look; a style sheet of our own, in which nothing of a drawing stands. */
public enum PageStyle implements Content {
  /** Phone, screen and printer, light and dark. */
  PAGE("page.css");

  private final String file;

  PageStyle(String file) {
    this.file = file;
  }

  @Override
  public void writeTo(TemplateOutput output) {
    try (InputStream stream =
        Optional.ofNullable(PageStyle.class.getResourceAsStream(file))
            .orElseThrow(() -> new IllegalStateException("the program lacks its " + file))) {
      output.writeContent(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
