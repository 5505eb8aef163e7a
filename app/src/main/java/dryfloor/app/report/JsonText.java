package dryfloor.app.report;

import dryfloor.model.file.VisibleText;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What is written for other programs: indented, and with no mark in it that nobody sees. */
public final class JsonText {

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private JsonText() {}

  /** A root to be filled. */
  public static ObjectNode root() {
    return JSON.createObjectNode();
  }

  /** The text of a file. */
  public static String of(ObjectNode root) {
    return VisibleText.withoutTurnsInJson(JSON.writeValueAsString(root)) + "\n";
  }
}
