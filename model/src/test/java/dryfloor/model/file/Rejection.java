package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** A sound sample file with something changed, and what the reader says about it. */
record Rejection(String text, List<Problem> problems) {

  /** The sample with the first occurrence of {@code sound} replaced. */
  static Rejection of(String sound, String broken) {
    String text = SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP);
    assertThat(text).contains(sound);
    int start = text.indexOf(sound);
    return ofText(text.substring(0, start) + broken + text.substring(start + sound.length()));
  }

  static Rejection ofText(String text) {
    Reading reading = InstallationFile.readText(text);
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    return new Rejection(text, ((Reading.Rejected) reading).problems());
  }

  /** Expects exactly one problem, at this path and at the first occurrence of this text. */
  void isOnly(String path, String at, String message, String remedy) {
    assertThat(problems).hasSize(1);
    says(path, at, message, remedy);
  }

  /** Expects this problem, among others, at the first occurrence of this text. */
  void says(String path, String at, String message, String remedy) {
    assertThat(text).contains(at);
    String before = text.substring(0, text.indexOf(at));
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.path()).isEqualTo(path);
              assertThat(problem.message()).contains(message);
              assertThat(problem.remedy()).contains(remedy);
              assertThat(problem.line() + ":" + problem.column()).isEqualTo(line + ":" + column);
            });
  }
}
