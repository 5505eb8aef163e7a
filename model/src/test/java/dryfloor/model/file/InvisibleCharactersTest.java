package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What nobody sees must not steer the terminal or the page of whoever reads an answer. */
class InvisibleCharactersTest {

  @ParameterizedTest
  @CsvSource({
    "\\u001b[31mDisplay, U+001B at character 1",
    "Dis\\nplay, U+000A at character 4",
    "Display\\u0007, U+0007 at character 8",
    "Dis\\tplay, U+0009 at character 4",
    "Display\\u009b2J, U+009B at character 8",
    "Display\\u2028, U+2028 at character 8",
    "Display\\ud83d, U+D83D at character 8",
    "Display\\uffff, U+FFFF at character 8"
  })
  void aNameWithAnInvisibleCharacterIsRefusedWhereItStands(String name, String told) {
    Rejection.of("\"name\": \"Overflow teeth\"", "\"name\": \"" + name + "\"")
        .isOnly("weirs[0].name", "\"" + name, "name holds the invisible " + told, "delete it");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\u001b[2J", "\\u202e", "\\n"})
  void whateverIsQuotedFromAFileIsSpelledOut(String invisible) {
    Rejection unknown = Rejection.of("\"bore\": \"32 mm\"", "\"" + invisible + "\": \"32 mm\"");
    Rejection quantity = Rejection.of("\"bore\": \"32 mm\"", "\"bore\": \"32 " + invisible + "\"");
    Rejection reference =
        Rejection.of("\"storey\": \"cellar\"", "\"storey\": \"c" + invisible + "\"");
    Rejection id = Rejection.of("\"id\": \"gully\"", "\"id\": \"gully" + invisible + "\"");
    for (Rejection rejection : new Rejection[] {unknown, quantity, reference, id}) {
      assertThat(rejection.problems().toString())
          .contains("U+")
          .doesNotContain("\u001b", "\u202e", "\n");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Großes Becken", "水槽", "חדר משאבות", "Æquorin 🐠", "Pump (A) – 2 \\\"left\\\""})
  void namesInEveryScriptAreRead(String name) {
    String text =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace("\"name\": \"Overflow teeth\"", "\"name\": \"" + name + "\"");
    assertThat(InstallationFile.readText(text)).isInstanceOf(Reading.Read.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x"})
  void aLongTextIsShortenedBetweenItsCharacters(String before) {
    String fish = before + "🐠".repeat(400);
    Rejection rejection = Rejection.of("\"storey\": \"cellar\"", "\"storey\": \"" + fish + "\"");
    String message = rejection.problems().getFirst().message();
    assertThat(message).contains("🐠 ... 🐠").hasSizeLessThan(450);
    assertThat(VisibleText.of(message)).isEqualTo(message);
  }

  @Test
  void marksThatTurnTextAroundAreShownAndNothingElseChanges() {
    assertThat(VisibleText.withoutTurns("a\u202eb\u2066c\nd")).isEqualTo("a<U+202E>b<U+2066>c\nd");
    assertThat(VisibleText.of("a\u202eb\nc")).isEqualTo("a<U+202E>b<U+000A>c");
    assertThat(VisibleText.withoutTurns("tank 3\u200f")).isEqualTo("tank 3<U+200F>");
    assertThat(VisibleText.withoutTurnsInJson("\"a\u202eb\u200e\""))
        .isEqualTo("\"a\\u202Eb\\u200E\"");
    assertThat(VisibleText.of("Becken 🐠")).isEqualTo("Becken 🐠");
  }
}
