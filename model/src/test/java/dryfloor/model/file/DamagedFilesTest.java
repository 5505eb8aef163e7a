package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** However a file is damaged, the reader answers; it never fails. */
class DamagedFilesTest {

  private static final Pattern TOKEN =
      Pattern.compile("\"[^\"]*\"|[0-9.]+|true|false|[\\[\\]{}:,]");

  private static final List<String> TOKENS =
      TOKEN
          .matcher(
              SampleFiles.text(SampleFiles.EVERY_FORM)
                  + SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP))
          .results()
          .map(MatchResult::group)
          .toList();

  @Property(tries = 1500)
  void aFileWithTokensExchangedIsAnswered(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 100_000) Integer> places,
      @ForAll @IntRange(max = 100_000) int replacement) {
    List<String> tokens =
        new ArrayList<>(
            TOKEN
                .matcher(SampleFiles.text(SampleFiles.EVERY_FORM))
                .results()
                .map(MatchResult::group)
                .toList());
    for (int place : places) {
      String kind = tokens.get(place % tokens.size()).substring(0, 1);
      List<String> alike = TOKENS.stream().filter(token -> token.startsWith(kind)).toList();
      tokens.set(place % tokens.size(), alike.get((replacement + place) % alike.size()));
    }
    assertAnswered(String.join(" ", tokens));
  }

  @Property(tries = 300)
  void aFileCutOffAnywhereIsRejected(@ForAll @IntRange(max = 100_000) int length) {
    String text = SampleFiles.text(SampleFiles.EVERY_FORM).strip();
    assertThat(InstallationFile.readText(text.substring(0, length % text.length())))
        .isInstanceOf(Reading.Rejected.class);
  }

  private static void assertAnswered(String text) {
    switch (InstallationFile.readText(text)) {
      case Reading.Read read ->
          assertThat(read.installation().toString())
              .doesNotContain("NaN")
              .doesNotContain("Infinity");
      case Reading.Rejected rejected -> assertThat(rejected.problems()).isNotEmpty();
    }
  }
}
