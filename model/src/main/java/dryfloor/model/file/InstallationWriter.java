package dryfloor.model.file;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Vessel;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Collectors;

/**
 * Writes installations as files. What is read again equals what was written but for rounding in the
 * twelfth digit. Heights are written as plain distances: that one was once given relative to a rim
 * is not kept.
 */
public final class InstallationWriter {

  private InstallationWriter() {}

  /**
   * Saves an installation. The file is replaced in one step once the new text is safely on the
   * disk; what it held before is kept beside it with the ending {@code .bak}.
   *
   * @throws IOException if the new text can't be stored; the old file is untouched then
   * @throws IllegalArgumentException if the installation refers to something it does not draw
   */
  public static void save(Installation installation, Path file, Units units) throws IOException {
    SafeFile.replace(file, text(installation, units));
  }

  /**
   * An installation as the text of a file.
   *
   * @throws IllegalArgumentException if the installation refers to something it does not draw
   */
  public static String text(Installation installation, Units units) {
    Sheet sheet = sheet(installation, new Spelling(units));
    return SheetText.of(ToleranceWriter.write(sheet, installation.tolerances()));
  }

  private static Sheet sheet(Installation installation, Spelling spelling) {
    Bases bases = Bases.of(installation);
    PlaceWriter places = new PlaceWriter(installation, bases, spelling);
    RunWriter runs =
        new RunWriter(
            bases,
            installation.floors().stream().map(Floor::id).collect(Collectors.toSet()),
            spelling);
    ControlWriter controls = new ControlWriter(bases, runs, spelling);
    double salinity = usualSalinity(installation);
    return new Sheet(spelling)
        .put("dryfloor", FileVersion.NEWEST.newest())
        .put("name", installation.name())
        .put("water", water(installation, salinity, spelling))
        .quantity("away", QuantityKind.TIME, installation.conditions().away())
        .put("storeys", installation.storeys().stream().map(places::storey).toList())
        .put("floors", installation.floors().stream().map(places::floor).toList())
        .put(
            "vessels",
            installation.vessels().stream().map(vessel -> places.vessel(vessel, salinity)).toList())
        .putIfAny("weirs", installation.weirs().stream().map(places::weir).toList())
        .putIfAny("junctions", installation.junctions().stream().map(places::junction).toList())
        .putIfAny("supplies", installation.supplies().stream().map(places::supply).toList())
        .putIfAny("drains", installation.drains().stream().map(places::drain).toList())
        .putIfAny("runs", installation.runs().stream().map(runs::run).toList())
        .putIfAny(
            "circulationPumps",
            installation.circulationPumps().stream().map(controls::circulationPump).toList())
        .putIfAny("circuits", installation.circuits().stream().map(controls::circuit).toList())
        .putIfAny("controls", installation.controls().stream().map(controls::control).toList())
        .put("failures", controls.failures(installation.failureSettings()));
  }

  private static Sheet water(Installation installation, double salinity, Spelling spelling) {
    return new Sheet(spelling)
        .quantity("salinity", QuantityKind.SALINITY, salinity)
        .quantity("temperature", QuantityKind.TEMPERATURE, installation.conditions().celsius());
  }

  /** The salinity of the first vessel with water: every vessel that differs says so itself. */
  private static double usualSalinity(Installation installation) {
    return installation.vessels().stream()
        .filter(vessel -> !vessel.isBasin())
        .findFirst()
        .map(Vessel::salinity)
        .orElse(0.0);
  }
}
