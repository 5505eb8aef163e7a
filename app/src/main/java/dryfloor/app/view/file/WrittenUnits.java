package dryfloor.app.view.file;

import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Which units a file is written in, so that it is saved in them again: those it uses most. */
final class WrittenUnits {

  private static final Pattern US =
      Pattern.compile("\"-?[0-9.]+ (in|inch|ft|in2|ft2|gal|gal\\(US\\)|gpm|gph|gpd|psi|lb|°F)\"");

  private static final Pattern METRIC =
      Pattern.compile("\"-?[0-9.]+ (mm|cm|m|mm2|cm2|m2|L|mL|m3|L/min|L/h|L/s|m3/h|bar|Pa|kg|°C)\"");

  private WrittenUnits() {}

  static Units of(Path file) throws IOException {
    return of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
  }

  static Units of(String text) {
    return US.matcher(text).results().count() > METRIC.matcher(text).results().count()
        ? Units.US
        : Units.METRIC;
  }
}
