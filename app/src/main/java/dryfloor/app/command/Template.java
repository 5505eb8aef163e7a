package dryfloor.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;

/** Drawings to begin with. */
enum Template {
  CELLAR_SUMP(
      "cellar-sump", "a display upstairs, a filter sump in the cellar, top-off and a floor drain");

  private final String id;
  private final String description;

  Template(String id, String description) {
    this.id = id;
    this.description = description;
  }

  String id() {
    return id;
  }

  String description() {
    return description;
  }

  static Optional<Template> find(String id) {
    return Arrays.stream(values()).filter(template -> template.id.equals(id)).findFirst();
  }

  /** The bytes of the file. */
  byte[] content() {
    String resource = "/templates/" + id + ".json";
    try (InputStream stream = Template.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the template " + resource + " is missing in the program");
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
