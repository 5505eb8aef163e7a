package dryfloor.analysis.simulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes what engine and third view say side by side. */
final class ThirdViewReport {

  private ThirdViewReport() {}

  static void write(List<TwoSteppings> compared, List<String> tooSlow, Path file)
      throws IOException {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "# The engine and the third view",
                "",
                "Differences are third view minus engine. Of what is allowed: 0.1 mm; 0.1 % or 1 mL.",
                "",
                "| scenario | failure | until | worst level | worst water | of what is allowed | |",
                "| --- | --- | --- | --- | --- | --- | --- |"));
    compared.forEach(both -> lines.add(both.row()));
    lines.add("");
    lines.add("Given up, not even the first hour being done in time:");
    lines.add("");
    tooSlow.forEach(failure -> lines.add("- " + failure));
    Files.write(file, lines);
  }
}
