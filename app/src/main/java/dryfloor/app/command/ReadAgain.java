package dryfloor.app.command;

import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Uncertain;
import dryfloor.model.Installation;
import dryfloor.model.file.Reading;
import dryfloor.model.file.UncertainDrawing;

/** A file that is read again wherever its uncertain values are, and asked about as it was asked. */
record ReadAgain(UncertainDrawing drawing, AnswerOptions options) implements Uncertain {

  @Override
  public int values() {
    return drawing.values().size();
  }

  @Override
  public Installation at(Point point) throws NotDrawable {
    return switch (drawing.at(point.shares())) {
      case Reading.Read read -> options.asked(read.installation());
      case Reading.Rejected rejected ->
          throw new NotDrawable(rejected.problems().getFirst().message());
    };
  }
}
