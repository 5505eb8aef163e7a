package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON Schema and the reader describe the same file. */
class SchemaTest {

  private static final Path FILE = Path.of("../scenarios/installation.schema.json");

  private static final Path TEMPLATES = Path.of("../app/src/main/resources/templates");

  private final String text = read();
  private final JsonNode root = JsonMapper.shared().readTree(text);
  private final Schema schema =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(text, InputFormat.JSON);

  @ParameterizedTest
  @ValueSource(strings = {SampleFiles.DISPLAY_ABOVE_SUMP, SampleFiles.EVERY_FORM})
  void everySoundFileSuitsTheSchema(String name) {
    assertThat(schema.validate(SampleFiles.text(name), InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource
  void everyShippedDrawingSuitsBothSchemaAndReader(Path file) throws IOException {
    assertThat(schema.validate(Files.readString(file), InputFormat.JSON)).isEmpty();
    assertThat(InstallationFile.read(file)).isInstanceOf(Reading.Read.class);
  }

  static List<Path> everyShippedDrawingSuitsBothSchemaAndReader() throws IOException {
    List<Path> shipped = new ArrayList<>();
    for (Path folder : List.of(FILE.resolveSibling(""), TEMPLATES)) {
      try (Stream<Path> files = Files.walk(folder)) {
        files
            .filter(file -> file.toString().endsWith(".json") && !file.equals(FILE))
            .sorted()
            .forEach(shipped::add);
      }
    }
    assertThat(shipped).hasSizeGreaterThan(10);
    return shipped;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\"32 kg\"", "32", "\"-\"", "\"32\"", "null", "\"thirty mm\"", "\"300 gal\""})
  void aBoreThatIsNoLengthSuitsNeitherSchemaNorReader(String bore) {
    String broken =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace("\"bore\": \"32 mm\"", "\"bore\": " + bore);
    assertThat(schema.validate(broken, InputFormat.JSON)).isNotEmpty();
    assertThat(InstallationFile.readText(broken)).isInstanceOf(Reading.Rejected.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "32 mm",
        "32mm",
        "+32 mm",
        "3.2e1 mm",
        "3.2 cm",
        "0.032 m",
        "1 1/4 in",
        "1-1/4 in",
        "5/4 in",
        "1.25 inch",
        "0.1 ft",
        "32000 µm",
        " 32 mm "
      })
  void aBoreThatIsALengthSuitsBothSchemaAndReader(String bore) {
    String sound =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace("\"bore\": \"32 mm\"", "\"bore\": \"" + bore + "\"");
    assertThat(schema.validate(sound, InputFormat.JSON)).isEmpty();
    assertThat(InstallationFile.readText(sound)).isInstanceOf(Reading.Read.class);
  }

  @ParameterizedTest
  @EnumSource(Form.class)
  void schemaAndReaderKnowTheSameFields(Form form) {
    JsonNode object = object(form);
    assertThat(object.get("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(form.fields());
    assertThat(texts(object.path("required"))).containsExactlyInAnyOrderElementsOf(form.required());
    assertThat(object.get("additionalProperties").booleanValue()).isFalse();
  }

  @Test
  void theSchemaDescribesNoObjectThatTheReaderDoesNotKnow() {
    List<String> objects =
        root.get("$defs")
            .propertyStream()
            .filter(definition -> definition.getValue().has("properties"))
            .map(java.util.Map.Entry::getKey)
            .toList();
    assertThat(objects)
        .isSubsetOf(Stream.of(Form.values()).map(Form::word).toList())
        .hasSize(Form.values().length - 1);
  }

  @ParameterizedTest
  @EnumSource(Form.class)
  void everyFieldIsDescribedOrRefersToADescription(Form form) {
    object(form)
        .get("properties")
        .propertyStream()
        .filter(field -> !field.getValue().has("const") && form != Form.FITTINGS)
        .forEach(
            field ->
                assertThat(field.getValue().has("description") || field.getValue().has("$ref"))
                    .as(form.word() + "." + field.getKey())
                    .isTrue());
  }

  private JsonNode object(Form form) {
    return form == Form.INSTALLATION ? root : root.get("$defs").get(form.word());
  }

  private static List<String> texts(JsonNode array) {
    return array.valueStream().map(JsonNode::stringValue).toList();
  }

  private static String read() {
    try {
      return Files.readString(FILE);
    } catch (IOException e) {
      throw new IllegalStateException("the schema belongs at " + FILE, e);
    }
  }
}
