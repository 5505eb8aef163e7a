package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips of somebody who types JSON by hand, told in words that need no manual. */
class WrongSyntaxTest {

  /** The place is where the mark ¦ stands; ↵ is a line break and ⇥ a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      quoteCharacter = '´',
      value = {
        "{ \"a\": 1¦, }                 # a comma stands before the closing }  # delete the comma",
        "{ \"a\": [1, 2¦,] }            # a comma stands before the closing ]  # delete the comma",
        "{ \"a\": [1,¦,2] }             # a value is missing in this list      # a text in quotes",
        "{ \"a\": 1,¦, \"b\": 2 }       # there is a comma too many            # delete it",
        "{ \"a\": 1, ↵ ¦// note ↵ \"b\": 2 } # a comment stands here           # has no comments",
        "{ ¦/* note */ \"a\": 1 }       # a comment stands here                # has no comments",
        "{ ¦name: 1 }                   # the name name stands without quotes  # write \"name\"",
        "{ ¦'a': 1 }                    # a single quote stands here           # the double one",
        "{ \"a\": ¦'x' }                # a single quote stands here           # the double one",
        "{ \"a\": ¦“x” }                # a curly quote stands here            # the straight one",
        "{ \"a\": ¦32 mm }              # 32 mm stands without quotes          # write \"32 mm\"",
        "{ \"a\": ¦1 1/4 in }           # 1 1/4 in stands without quotes       # \"1 1/4 in\"",
        "{ \"a\": ¦display }            # display stands without quotes        # write \"display\"",
        "{ \"a\": ¦True }               # 'True' has capitals                  # write true",
        "{ \"a\": ¦007 }                # the number 007 is not written        # write 7",
        "{ \"a\": ¦.5 }                 # the number .5 is not written         # write 0.5",
        "{ \"a\": ¦+5 }                 # the number +5 is not written         # write 5",
        "{ \"a\": ¦5. }                 # the number 5. is not written         # write 5",
        "{ \"a\": ¦-00.50 }             # the number -00.50 is not written     # write -0.50",
        "{ \"a\": 1,¦5 }                # the name of a field is missing       # take a point",
        "{ \"a\" ¦1 }                   # no colon follows the name \"a\"      # write \"a\":",
        "{ \"a\": ¦}                    # a value is missing after \"a\":      # a text in quotes",
        "{ \"a\": 1 ↵ ¦\"b\": 2 }       # a comma is missing before this       # a comma between",
        "{ \"a\": 1¦; \"b\": 2 }        # a semicolon stands here              # a comma",
        "{ \"a\": ¦\"x ↵ }              # has no closing quote on its line     # close it",
        "{ \"a\": \"x¦⇥y\" }            # control character (U+0009)           # write a space",
        "{ \"a\": \"C:¦\\data\" }       # \\d in a text means nothing          # write \\\\",
        "{ \"a\": \"¦\\u12G4\" }        # \\u in a text means nothing          # write \\\\",
        "[1, ↵ { \"a\": 1 ¦]            # because the { on line 2 is still open # write } before",
        "{ ↵ \"a\": [1, 2 ¦             # the [ on line 2 is never closed      # close every {",
        "{ \"a\": 1 } ¦}                # there is text after the end          # remove it",
        "¦not json                      # the file begins with not json        # begins { \"dryf",
        "{ \"a\": [¦<p> ] }              # <p> stands without quotes            # write \"<p>\"",
      })
  void everySlipIsToldWhereItStandsWithWhatWouldBeRight(
      String marked, String message, String remedy) {
    String spread = marked.replace("↵", "\n").replace("⇥", "\t");
    int offset = spread.indexOf('¦');
    Problem problem = only(spread.replace("¦", ""));
    FilePlace expected = FilePlace.inText(spread, offset);
    assertThat(problem.line() + ":" + problem.column())
        .isEqualTo(expected.line() + ":" + expected.column());
    assertThat(problem.message()).startsWith("not valid JSON: ").contains(message);
    assertThat(problem.remedy()).contains(remedy);
  }

  @Test
  void theSearchFindsNothingWrongInSoundFiles() {
    for (String file : List.of(SampleFiles.DISPLAY_ABOVE_SUMP, SampleFiles.EVERY_FORM)) {
      assertThat(SyntaxSearch.firstFault(SampleFiles.text(file))).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity"})
  void aNumberThatIsNoneIsToldAsAQuantity(String word) {
    Rejection.of("\"salinity\": \"35 g/kg\"", "\"salinity\": " + word)
        .says("water.salinity", word, "'" + word + "' is not a finite number", "35 g/kg");
  }

  /** LF, CR LF and CR alone, as editors and the parser itself count them. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void aSlipIsToldOnItsLineHoweverLinesEnd(String lineBreak) {
    Problem problem = only(String.join(lineBreak, "{", "  \"a\": 1,", "  \"b\": display", "}"));
    assertThat(problem.line() + ":" + problem.column()).isEqualTo("3:8");
  }

  @Test
  void aWordThatIsQuotedInPartKeepsItsCharactersWhole() {
    assertThat(only("{ \"a\": b" + "🐠".repeat(50) + " }").message())
        .contains("b" + "🐠".repeat(19) + " ... stands without quotes");
  }

  private static Problem only(String text) {
    List<Problem> problems = Rejection.ofText(text).problems();
    assertThat(problems).hasSize(1);
    return problems.getFirst();
  }
}
