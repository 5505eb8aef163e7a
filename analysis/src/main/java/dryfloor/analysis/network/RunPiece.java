package dryfloor.analysis.network;

import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A run or a piece of one, with its ends resolved.
 *
 * @param first end
 * @param second end
 * @param firstLoss at the first end (velocity heads)
 * @param secondLoss at the second end (velocity heads)
 * @param from where the piece begins along the run (m)
 * @param length of the piece (m)
 * @param points of its profile in order, both ends included
 * @param parts of the run that lie in the piece, in order
 * @param vented whether the vent at the crest of the run, if it has one, lies in the piece
 */
record RunPiece(
    PipeEnd first,
    PipeEnd second,
    double firstLoss,
    double secondLoss,
    double from,
    double length,
    List<Point> points,
    List<Part> parts,
    boolean vented) {

  /** A part drawn this near to its elevation sits where it was drawn (m). */
  private static final double DRAWN_EXACTLY = 5e-3;

  /** A point of the profile: distance from the beginning of the piece and elevation (m). */
  record Point(double along, double elevation) {}

  static RunPiece of(Run run, PipeEnd first, PipeEnd second) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, first.elevation()));
    run.waypoints().forEach(w -> points.add(new Point(w.along(), w.elevation())));
    points.add(new Point(run.length(), second.elevation()));
    List<Part> parts =
        run.parts().stream().sorted(Comparator.comparingDouble(Part::along)).toList();
    return new RunPiece(
        first,
        second,
        FittingLoss.atFirst(run, first),
        FittingLoss.atSecond(run, second),
        0,
        run.length(),
        points,
        parts,
        run.vented());
  }

  /**
   * Where along the piece something sits that is known by its elevation: where it was drawn if the
   * profile passes its elevation there, else where the profile last passes it on its way to the
   * second end, else at the crest.
   */
  double along(double elevation, double drawn) {
    if (Math.abs(elevationAt(drawn) - elevation) < DRAWN_EXACTLY) {
      return drawn;
    }
    for (int i = points.size() - 1; i > 0; i--) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      double rise = b.elevation() - a.elevation();
      if (rise != 0 && (a.elevation() - elevation) * (b.elevation() - elevation) <= 0) {
        return a.along() + (elevation - a.elevation()) / rise * (b.along() - a.along());
      }
    }
    return points.stream().max(Comparator.comparingDouble(Point::elevation)).orElseThrow().along();
  }

  private double elevationAt(double along) {
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      if (along <= b.along()) {
        double share = b.along() > a.along() ? (along - a.along()) / (b.along() - a.along()) : 0;
        return a.elevation() + Math.max(share, 0) * (b.elevation() - a.elevation());
      }
    }
    return points.getLast().elevation();
  }

  /** The piece up to a cut, with a new second end there and these parts. */
  RunPiece upTo(double cut, double elevation, PipeEnd end, List<Part> partsBefore) {
    List<Point> kept = new ArrayList<>(points.stream().filter(p -> p.along() < cut).toList());
    kept.add(new Point(cut, elevation));
    return new RunPiece(
        first,
        end,
        firstLoss,
        FittingLoss.atNewSecond(end),
        from,
        cut,
        kept,
        partsBefore,
        vented && reachesCrest(kept));
  }

  /** The piece after a cut, with a new first end there and these parts. */
  RunPiece after(double cut, double elevation, PipeEnd end, List<Part> partsBeyond) {
    List<Point> kept = new ArrayList<>();
    kept.add(new Point(0, elevation));
    points.stream()
        .filter(p -> p.along() > cut)
        .map(p -> new Point(p.along() - cut, p.elevation()))
        .forEach(kept::add);
    return new RunPiece(
        end,
        second,
        FittingLoss.atNewFirst(end),
        secondLoss,
        from + cut,
        length - cut,
        kept,
        partsBeyond,
        vented && reachesCrest(kept));
  }

  /** Whether a part of this piece goes up to its highest point, where a vent would be. */
  private boolean reachesCrest(List<Point> part) {
    return highest(part) >= highest(points);
  }

  private static double highest(List<Point> points) {
    return points.stream().mapToDouble(Point::elevation).max().orElseThrow();
  }

  /** How many parts lie before a distance (m). */
  int partsBefore(double cut) {
    return (int) parts.stream().filter(part -> part.along() < cut).count();
  }

  /** Where a part sits in this piece (m): at a cut if it was drawn beyond it. */
  double along(Part part) {
    return Math.clamp(part.along() - from, 0, length);
  }
}
