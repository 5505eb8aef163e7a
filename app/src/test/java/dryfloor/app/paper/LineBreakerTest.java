package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No line of a sheet ends within an amount. */
class LineBreakerTest {

  @Test
  void amountsAndTheirUnitsStayTogether() {
    assertThat(parts("It goes on at 16 068 L/h, 12 mm deep."))
        .containsExactly("It ", "goes ", "on ", "at ", "16 068 L/h, ", "12 mm ", "deep.");
  }

  @Test
  void wordsAfterANumberMayGoOnTheNextLine() {
    assertThat(parts("after 3 days 12 litres")).contains("3 ", "days ", "12 ", "litres");
  }

  private static List<String> parts(String text) {
    LineBreaker breaker = new LineBreaker();
    breaker.setText(text);
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int to = breaker.next(); to != BreakIterator.DONE; to = breaker.next()) {
      if (to > from) {
        parts.add(text.substring(from, to));
      }
      from = to;
    }
    return parts;
  }
}
