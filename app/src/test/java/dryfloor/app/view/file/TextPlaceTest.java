package dryfloor.app.view.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.file.Problem;
import org.junit.jupiter.api.Test;

/** Which stretch of a text a problem is about. */
class TextPlaceTest {

  private static final String TEXT = "{\n  \"level\": \"7 \\\"m\\\"\",\n  \"at\": -1.5e3, [\n";

  @Test
  void wordsAreTakenWithTheirQuotesWhateverIsQuotedInThem() {
    assertThat(at(2, 12)).isEqualTo("\"7 \\\"m\\\"\"");
    assertThat(at(2, 3)).isEqualTo("\"level\"");
  }

  @Test
  void aNumberIsTakenWholeAndABracketAlone() {
    assertThat(at(3, 9)).isEqualTo("-1.5e3");
    assertThat(at(3, 17)).isEqualTo("[");
  }

  @Test
  void quotesThatAreNeverClosedAreTakenAlone() {
    assertThat(stretch("\"open\n\"", 1, 1)).isEqualTo("\"");
  }

  @Test
  void aPlaceAfterTheEndIsTheEnd() {
    assertThat(at(9, 9)).isEmpty();
    assertThat(stretch("", 1, 1)).isEmpty();
  }

  @Test
  void lineAndColumnOfAnOffsetLeadBackToIt() {
    for (int offset = 0; offset < TEXT.length(); offset++) {
      int line = TextPlace.line(TEXT, offset);
      int column = TextPlace.column(TEXT, offset);
      assertThat(TextPlace.of(TEXT, new Problem(line, column, "", "", "")).start())
          .isEqualTo(offset);
    }
  }

  private static String at(int line, int column) {
    return stretch(TEXT, line, column);
  }

  private static String stretch(String text, int line, int column) {
    TextPlace place = TextPlace.of(text, new Problem(line, column, "", "", ""));
    return text.substring(place.start(), place.end());
  }
}
