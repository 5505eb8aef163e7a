package dryfloor.analysis.network;

import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * A run or a piece of one, with its ends resolved.
 *
 * @param first end
 * @param second end
 * @param from where the piece begins along the run (m)
 * @param length of the piece (m)
 * @param points of its profile in order, both ends included
 * @param parts of the run that lie in the piece
 */
record RunPiece(
    PipeEnd first,
    PipeEnd second,
    double from,
    double length,
    List<Point> points,
    List<Part> parts) {

  /** A point of the profile: distance from the beginning of the piece and elevation (m). */
  record Point(double along, double elevation) {}

  static RunPiece of(Run run, PipeEnd first, PipeEnd second) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, first.elevation()));
    run.waypoints().forEach(w -> points.add(new Point(w.along(), w.elevation())));
    points.add(new Point(run.length(), second.elevation()));
    return new RunPiece(first, second, 0, run.length(), points, run.parts());
  }

  /** The piece up to a cut, with a new second end there. */
  RunPiece upTo(double cut, double elevation, PipeEnd end) {
    List<Point> kept = new ArrayList<>(points.stream().filter(p -> p.along() < cut).toList());
    kept.add(new Point(cut, elevation));
    return new RunPiece(
        first, end, from, cut, kept, parts.stream().filter(p -> p.along() < cut).toList());
  }

  /** The piece after a cut, with a new first end there. */
  RunPiece after(double cut, double elevation, PipeEnd end) {
    List<Point> kept = new ArrayList<>();
    kept.add(new Point(0, elevation));
    points.stream()
        .filter(p -> p.along() > cut)
        .map(p -> new Point(p.along() - cut, p.elevation()))
        .forEach(kept::add);
    return new RunPiece(
        end,
        second,
        from + cut,
        length - cut,
        kept,
        parts.stream().filter(p -> p.along() >= cut).toList());
  }
}
