package dryfloor.model.file;

import java.util.List;
import java.util.Optional;

/**
 * Brings a file up to the newest version.
 *
 * @param newest the version that the rest of the reader understands
 * @param upgrades one for every older version
 */
record FileVersion(int newest, List<Upgrade> upgrades) {

  /** Version 1 is the first, so that there is nothing to bring up yet. */
  static final FileVersion NEWEST = new FileVersion(1, List.of());

  FileVersion {
    upgrades = List.copyOf(upgrades);
  }

  /** The file in the newest version, or empty after its version has been reported as wrong. */
  Optional<Located.Structure> bringUp(Located.Structure root, Problems problems) {
    Optional<Located> version = root.find("dryfloor");
    if (version.isEmpty()) {
      problems.add(
          root.place(),
          "'dryfloor' is missing, so this may not be an installation file",
          "begin with \"dryfloor\": " + newest);
      return Optional.empty();
    }
    FilePlace place = version.get().place();
    if (!(version.get() instanceof Located.Numeral number
        && number.literal().matches("[1-9][0-9]{0,5}"))) {
      problems.add(place, "this is no version of the file format", "write \"dryfloor\": " + newest);
      return Optional.empty();
    }
    int given = Integer.parseInt(number.literal());
    if (given > newest) {
      problems.add(
          place,
          "the file has version " + given + ", newer than this program knows",
          "open it with a newer Dryfloor; this one reads versions up to " + newest);
      return Optional.empty();
    }
    return Optional.of(upgraded(root, given));
  }

  private Located.Structure upgraded(Located.Structure root, int given) {
    Located.Structure current = root;
    for (int version = given; version < newest; version++) {
      int from = version;
      Upgrade upgrade =
          upgrades.stream().filter(step -> step.from() == from).findFirst().orElseThrow();
      current = upgrade.change().apply(current);
    }
    return current;
  }
}
