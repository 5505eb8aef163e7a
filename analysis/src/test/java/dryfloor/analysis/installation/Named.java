package dryfloor.analysis.installation;

import dryfloor.model.Installation;
import java.util.stream.Stream;

/**
 * An installation with the name that a test report shows.
 *
 * @param name short
 * @param installation as drawn
 */
public record Named(String name, Installation installation) {

  /** The small installations of the tests and all that the project ships. */
  public static Stream<Named> all() {
    return Stream.concat(small(), shipped());
  }

  /** The small installations of the tests. */
  public static Stream<Named> small() {
    return Stream.of(
        new Named("display above sump", DisplayAboveSump.asDrawn()),
        new Named(
            "display over a tray, with check valve",
            new DisplayAboveSump().withCheckValve().withBasinUnderTheDisplay().plan().draw()),
        new Named("two storeys of everything", EverythingHouse.asDrawn()));
  }

  public static Stream<Named> shipped() {
    return Shipped.files().stream()
        .map(file -> new Named(file.toString(), Shipped.read(file)));
  }

  @Override
  public String toString() {
    return name;
  }
}
