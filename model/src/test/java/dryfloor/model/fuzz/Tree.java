package dryfloor.model.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.io.JsonStringEncoder;
import tools.jackson.core.json.JsonFactory;

/** JSON that may be bent: a field may come twice, and a leaf is any text at all. */
sealed interface Tree {

  JsonFactory JSON = new JsonFactory();

  /** Some twelve times the largest file that comes with the project (characters). */
  int LARGEST = 400_000;

  /** An object or a list; the entries of a list have empty names. */
  record Branch(boolean named, List<Entry> entries) implements Tree {}

  /** Anything else, as it is written: texts with their quotes. */
  record Leaf(String written) implements Tree {

    boolean isText() {
      return written.length() >= 2 && written.startsWith("\"");
    }

    /** What stands between the quotes. */
    String inQuotes() {
      return written.substring(1, written.length() - 1);
    }
  }

  /** A field of an object (its name as it is written between quotes) or an item of a list. */
  record Entry(String name, Tree value) {}

  static Leaf text(String inQuotes) {
    return new Leaf('"' + inQuotes + '"');
  }

  /** Another tree that looks the same. */
  default Tree copy() {
    return switch (this) {
      case Leaf leaf -> leaf;
      case Branch branch -> {
        List<Entry> entries = new ArrayList<>();
        branch
            .entries()
            .forEach(entry -> entries.add(new Entry(entry.name(), entry.value().copy())));
        yield new Branch(branch.named(), entries);
      }
    };
  }

  /** The branch at the root of a text, or empty if it is no JSON or only a leaf. */
  static Optional<Branch> read(byte[] json) {
    try (JsonParser parser =
        JSON.createParser(ObjectReadContext.empty(), new String(json, StandardCharsets.UTF_8))) {
      parser.nextToken();
      return read(parser) instanceof Branch root ? Optional.of(root) : Optional.empty();
    } catch (JacksonException broken) {
      return Optional.empty();
    }
  }

  private static Tree read(JsonParser parser) {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
      boolean named = token == JsonToken.START_OBJECT;
      List<Entry> entries = new ArrayList<>();
      while (!parser.nextToken().isStructEnd()) {
        String name = named ? quoted(parser.currentName()) : "";
        if (named) {
          parser.nextToken();
        }
        entries.add(new Entry(name, read(parser)));
      }
      return new Branch(named, entries);
    }
    String written = token == null ? "" : parser.getString();
    return token == JsonToken.VALUE_STRING ? text(quoted(written)) : new Leaf(written);
  }

  private static String quoted(String text) {
    return new String(JsonStringEncoder.getInstance().quoteAsCharArray(text));
  }

  /** The tree as a file, an entry to a line; cut off where it grows beyond all bounds. */
  static byte[] write(Tree tree) {
    StringBuilder text = new StringBuilder();
    write(tree, text);
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void write(Tree tree, StringBuilder text) {
    switch (tree) {
      case Leaf leaf -> text.append(leaf.written());
      case Branch branch -> {
        text.append(branch.named() ? '{' : '[');
        String separator = "";
        for (Entry entry : branch.entries()) {
          text.append(separator);
          if (text.length() > LARGEST) {
            return;
          }
          if (branch.named()) {
            text.append('"').append(entry.name()).append("\": ");
          }
          write(entry.value(), text);
          separator = ",\n";
        }
        text.append(branch.named() ? '}' : ']');
      }
    }
  }
}
