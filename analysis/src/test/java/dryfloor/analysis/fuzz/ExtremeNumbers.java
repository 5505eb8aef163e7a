package dryfloor.analysis.fuzz;

import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Changes numbers in the text of a drawing, each alone so far that the drawing can still be read.
 *
 * @param text of the file as it is now
 */
record ExtremeNumbers(String text) {

  /** The number of a quantity in quotes, or one without a unit. */
  private static final Pattern NUMBER =
      Pattern.compile("(?<=\")[0-9][0-9.]*(?= [^\"]*\")|(?<=\": )[0-9][0-9.]*(?=[,} \n])");

  private static final List<Double> FACTORS =
      List.of(
          0.0, 1e-6, 1e-4, 1e-3, 1e-2, 0.1, 0.5, 0.9, 0.99, 0.999999, 1.000001, 1.01, 1.1, 2.0, 5.0,
          10.0, 100.0, 1e3, 1e4, 1e6);

  /** Tries so many changes; those that no drawing can have are taken back. */
  ExtremeNumbers changed(int tries, RandomGenerator random) {
    ExtremeNumbers now = this;
    for (int i = 0; i < tries; i++) {
      ExtremeNumbers next = now.withOneChanged(random);
      now = next.installation().isPresent() ? next : now;
    }
    return now;
  }

  private ExtremeNumbers withOneChanged(RandomGenerator random) {
    List<MatchResult> numbers = NUMBER.matcher(text).results().toList();
    MatchResult number = numbers.get(random.nextInt(numbers.size()));
    double factor = FACTORS.get(random.nextInt(FACTORS.size()));
    String other =
        new BigDecimal(number.group())
            .multiply(BigDecimal.valueOf(factor))
            .round(MathContext.DECIMAL64)
            .stripTrailingZeros()
            .toPlainString();
    return new ExtremeNumbers(
        text.substring(0, number.start()) + other + text.substring(number.end()));
  }

  /** The drawing, if it is one. */
  Optional<Installation> installation() {
    return switch (InstallationFile.readText(text)) {
      case Reading.Read read -> Optional.of(read.installation());
      case Reading.Rejected rejected -> Optional.empty();
    };
  }
}
