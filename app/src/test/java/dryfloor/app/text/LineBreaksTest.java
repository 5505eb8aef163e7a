package dryfloor.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LineBreaksTest {

  @Test
  void litresStayWithTheirNumber() {
    assertThat(LineBreaks.broken("onto the floor: 270 L in all", 19, String::length))
        .containsExactly("onto the floor:", "270 L in all");
  }

  @Test
  void aDepthInBracketsStaysWithItsUnit() {
    assertThat(LineBreaks.broken("the floor (3 mm deep)", 13, String::length))
        .containsExactly("the floor", "(3 mm deep)");
  }

  @Test
  void aWordThatIsTooWideStandsAlone() {
    assertThat(LineBreaks.broken("a waterproofing b", 5, String::length))
        .containsExactly("a", "waterproofing", "b");
  }
}
