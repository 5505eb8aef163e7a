package dryfloor.app.shipped;

import java.util.Arrays;
import java.util.Optional;

/** Drawings to begin with. */
public enum Template {
  CELLAR_SUMP(
      "cellar-sump", "a display upstairs, a filter sump in the cellar, top-off and a floor drain");

  private final String id;
  private final String description;

  Template(String id, String description) {
    this.id = id;
    this.description = description;
  }

  public String id() {
    return id;
  }

  public String description() {
    return description;
  }

  /** The template of this id. */
  public static Optional<Template> find(String id) {
    return Arrays.stream(values()).filter(template -> template.id.equals(id)).findFirst();
  }

  /** The bytes of the file. */
  public byte[] content() {
    return Shipped.bytes("/templates/" + id + ".json");
  }
}
