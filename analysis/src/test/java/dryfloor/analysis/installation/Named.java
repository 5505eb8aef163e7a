package dryfloor.analysis.installation;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.model.Installation;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An installation with the name that a test report shows.
 *
 * @param name short
 * @param installation as drawn
 * @param isLarge whether all its failures take longer than a test may
 */
public record Named(String name, Installation installation, boolean isLarge) {

  private static final int USUAL_SAMPLE = 10;

  /** The small installations of the tests and all that the project ships. */
  public static Stream<Named> all() {
    return Stream.concat(small(), shipped());
  }

  /** The small installations of the tests. */
  public static Stream<Named> small() {
    return Stream.of(
        new Named("display above sump", DisplayAboveSump.asDrawn(), false),
        new Named(
            "display over a tray, with check valve",
            new DisplayAboveSump().withCheckValve().withBasinUnderTheDisplay().plan().draw(),
            false),
        new Named("two storeys of everything", EverythingHouse.asDrawn(), false));
  }

  public static Stream<Named> shipped() {
    return Shipped.files().stream()
        .map(file -> new Named(file.toString(), Shipped.read(file), true));
  }

  /**
   * Its failures; of a large installation power lost and others from all over the list, {@value
   * #USUAL_SAMPLE} unless the system property {@code dryfloor.failures} says how many.
   */
  public List<Failure> failures() {
    List<Failure> all = FailureCatalogue.of(installation);
    if (!isLarge) {
      return all;
    }
    int most = Math.min(Integer.getInteger("dryfloor.failures", USUAL_SAMPLE), all.size());
    return IntStream.range(0, most).mapToObj(i -> all.get(i * all.size() / most)).toList();
  }

  @Override
  public String toString() {
    return name;
  }
}
