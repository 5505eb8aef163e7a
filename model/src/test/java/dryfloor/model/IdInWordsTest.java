package dryfloor.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IdInWordsTest {

  @ParameterizedTest
  @CsvSource({
    "sump, sump",
    "return-line, return line",
    "lift-pump-a, lift pump A",
    "a-riser, A riser",
    "top-off-switch, top-off switch",
    "uv-lamp, UV lamp",
    "raceway-1, raceway 1",
    "-, ''",
  })
  void aThingWithoutANameIsCalledByTheWordsOfItsId(String id, String name) {
    assertThat(IdInWords.of(id)).isEqualTo(name);
  }
}
