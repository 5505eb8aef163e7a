package dryfloor.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads JSON text into located values. A syntax error ends the reading, because nothing after it
 * can be trusted.
 */
final class LocatedReader {

  /** The format itself nests seven deep, down to the points of a pump curve. */
  static final int DEEPEST_NESTING = 64;

  static final int LONGEST_TEXT = 10_000;
  static final int LONGEST_NUMBER = 1000;

  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST_NESTING)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNumberLength(LONGEST_NUMBER)
                  .build())
          .enable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .build();

  private final JsonParser parser;

  private LocatedReader(JsonParser parser) {
    this.parser = parser;
  }

  /** The one value in the text, or empty after a syntax error has been reported. */
  static Optional<Located> read(String text, Problems problems) {
    try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), text)) {
      LocatedReader reader = new LocatedReader(parser);
      if (parser.nextToken() == null) {
        problems.add(FilePlace.WHOLE_FILE, "the file is empty", "it begins { \"dryfloor\": 1, ...");
        return Optional.empty();
      }
      Located value = reader.value("");
      if (parser.nextToken() != null) {
        problems.add(reader.place(""), "there is text after the end", "remove it");
        return Optional.empty();
      }
      return Optional.of(value);
    } catch (JacksonException e) {
      SyntaxProblem.report(e, text, problems);
      return Optional.empty();
    }
  }

  private Located value(String path) {
    FilePlace place = place(path);
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> structure(place);
      case START_ARRAY -> sequence(place);
      case VALUE_STRING -> new Located.Text(place, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Located.Numeral(place, parser.getString());
      case VALUE_TRUE -> new Located.Truth(place, true);
      case VALUE_FALSE -> new Located.Truth(place, false);
      case VALUE_NULL -> new Located.Nothing(place);
      case END_OBJECT, END_ARRAY, PROPERTY_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
          throw new IllegalStateException("a JSON value cannot begin with " + token);
    };
  }

  private Located structure(FilePlace place) {
    List<Located.Member> members = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      FilePlace namePlace = place(place.pathOf(name));
      parser.nextToken();
      members.add(new Located.Member(namePlace, name, value(namePlace.path())));
    }
    return new Located.Structure(place, members);
  }

  private Located sequence(FilePlace place) {
    List<Located> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(place.path() + "[" + items.size() + "]"));
    }
    return new Located.Sequence(place, items);
  }

  private FilePlace place(String path) {
    TokenStreamLocation location = parser.currentTokenLocation();
    return new FilePlace(location.getLineNr(), location.getColumnNr(), path);
  }
}
