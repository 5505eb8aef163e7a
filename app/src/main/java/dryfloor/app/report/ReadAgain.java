package dryfloor.app.report;

import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Uncertain;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Reading;
import dryfloor.model.file.UncertainDrawing;
import dryfloor.model.file.UncertainValue;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A drawing that is read again wherever its uncertain values are.
 *
 * @param asked what is asked about it otherwise than it says itself, such as another absence
 */
public record ReadAgain(UncertainDrawing drawing, UnaryOperator<Installation> asked)
    implements Uncertain {

  /** What a drawing says of itself, which may have been changed since it was read. */
  public static ReadAgain of(Installation installation) {
    return switch (InstallationFile.readText(InstallationWriter.text(installation, Units.METRIC))) {
      case Reading.Read read -> new ReadAgain(read.uncertain(), UnaryOperator.identity());
      case Reading.Rejected rejected ->
          throw new IllegalStateException(
              "what was written can't be read: " + rejected.problems().getFirst().message());
    };
  }

  /** What is not known exactly, in the order of the drawing. */
  public List<UncertainValue> named() {
    return drawing.values();
  }

  @Override
  public int values() {
    return drawing.values().size();
  }

  @Override
  public Installation at(Point point) throws NotDrawable {
    return switch (drawing.at(point.shares())) {
      case Reading.Read read -> asked.apply(read.installation());
      case Reading.Rejected rejected ->
          throw new NotDrawable(rejected.problems().getFirst().message());
    };
  }
}
