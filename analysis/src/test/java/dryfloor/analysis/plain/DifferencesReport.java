package dryfloor.analysis.plain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Writes what engine and plain simulator say side by side. */
final class DifferencesReport {

  private DifferencesReport() {}

  static void write(List<Comparison> comparisons, Path file) throws IOException {
    Stream<String> rows =
        comparisons.stream().map(comparison -> comparison.row(remark(comparison)));
    Files.write(
        file,
        Stream.concat(
                Stream.of(
                    "# The engine and the plain simulator",
                    "",
                    "Differences are plain minus engine.",
                    "",
                    "| scenario | failure | engine | plain | worst level | worst water | |",
                    "| --- | --- | --- | --- | --- | --- | --- |"),
                rows)
            .toList());
  }

  private static String remark(Comparison comparison) {
    if (comparison.agrees()) {
      return "agrees";
    }
    if (!comparison.finished()) {
      return "plain not finished";
    }
    return Explained.of(comparison).map(Enum::name).orElse("**DIFFERS**");
  }
}
