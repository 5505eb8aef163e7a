package dryfloor.app.drawing;

import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the places of parts on a drawn line: at their own height where they have one, otherwise so
 * far along as they are along the run.
 */
final class Fixtures {

  private static final double APART = 0.16;

  private final Run run;
  private final Pipe bare;
  private final List<Pipe.Fixture> placed = new ArrayList<>();
  private double last;

  private Fixtures(Run run, List<Point> line) {
    this.run = run;
    this.bare = new Pipe(run.id(), line, List.of());
  }

  static List<Pipe.Fixture> of(Run run, List<Point> line) {
    Fixtures fixtures = new Fixtures(run, line);
    run.parts().forEach(fixtures::place);
    return fixtures.placed;
  }

  private void place(Part part) {
    double length = bare.length();
    double share = run.length() > 0 ? Math.clamp(part.along() / run.length(), 0, 1) : 0;
    double wanted = share * length;
    OptionalDouble height = height(part);
    double at = height.isPresent() ? crossing(height.getAsDouble(), wanted) : free(wanted, length);
    last = at;
    placed.add(fixture(part, at));
  }

  private static OptionalDouble height(Part part) {
    return switch (part) {
      case Part.SiphonBreak siphonBreak -> OptionalDouble.of(siphonBreak.elevation());
      case Part.Joint joint -> OptionalDouble.of(joint.elevation());
      case Part.Device device -> OptionalDouble.of(device.elevation());
      case Part.Pump pump -> OptionalDouble.empty();
      case Part.Valve valve -> OptionalDouble.empty();
      case Part.FloatValve floatValve -> OptionalDouble.empty();
      case Part.CheckValve checkValve -> OptionalDouble.empty();
      case Part.Strainer strainer -> OptionalDouble.empty();
      case Part.Restrictor restrictor -> OptionalDouble.empty();
    };
  }

  private static Pipe.Kind kind(Part part) {
    return switch (part) {
      case Part.Pump pump -> Pipe.Kind.PUMP;
      case Part.Valve valve -> Pipe.Kind.VALVE;
      case Part.FloatValve floatValve -> Pipe.Kind.FLOAT_VALVE;
      case Part.CheckValve checkValve -> Pipe.Kind.CHECK_VALVE;
      case Part.SiphonBreak siphonBreak -> Pipe.Kind.SIPHON_BREAK;
      case Part.Joint joint -> Pipe.Kind.JOINT;
      case Part.Strainer strainer -> Pipe.Kind.STRAINER;
      case Part.Restrictor restrictor -> Pipe.Kind.RESTRICTOR;
      case Part.Device device -> Pipe.Kind.DEVICE;
    };
  }

  /** Distance along the line, nearest to the wanted one, at which it passes a height. */
  private double crossing(double height, double wanted) {
    List<Double> crossings = new ArrayList<>();
    double start = 0;
    for (Pipe.Piece piece : bare.pieces()) {
      double low = Math.min(piece.from().y(), piece.to().y());
      double high = Math.max(piece.from().y(), piece.to().y());
      if (height >= low && height <= high) {
        crossings.add(start + (piece.upright() ? Math.abs(height - piece.from().y()) : 0));
      }
      start += piece.length();
    }
    return crossings.stream()
        .min(Comparator.comparingDouble(at -> Math.abs(at - wanted)))
        .orElse(wanted);
  }

  /** A distance near the wanted one that keeps clear of the ends and of the parts before. */
  private double free(double wanted, double length) {
    double clear = Math.min(APART, length / 3);
    double start = Math.max(Math.max(wanted, firstUpright() + clear), last + APART);
    double at = Math.clamp(start, clear, Math.max(clear, length - clear));
    double step = 0;
    for (int tries = 0; tries < 40; tries++) {
      for (double candidate : new double[] {at + step, at - step}) {
        if (candidate >= clear && candidate <= length - clear && isFree(candidate)) {
          return candidate;
        }
      }
      step += APART / 2;
    }
    return at;
  }

  /** Where the first long upright piece begins: parts are seen best on those. */
  private double firstUpright() {
    double start = 0;
    for (Pipe.Piece piece : bare.pieces()) {
      if (piece.upright() && piece.length() > 3 * APART) {
        return start;
      }
      start += piece.length();
    }
    return 0;
  }

  private boolean isFree(double candidate) {
    Point point = fixturePoint(candidate);
    return placed.stream().allMatch(other -> other.at().distanceTo(point) >= APART);
  }

  private Point fixturePoint(double along) {
    double start = 0;
    for (Pipe.Piece piece : bare.pieces()) {
      if (along <= start + piece.length()) {
        return piece.from().towards(piece.to(), (along - start) / piece.length());
      }
      start += piece.length();
    }
    return bare.line().getLast();
  }

  private Pipe.Fixture fixture(Part part, double along) {
    double start = 0;
    Pipe.Piece at = bare.pieces().getLast();
    for (Pipe.Piece piece : bare.pieces()) {
      if (along <= start + piece.length()) {
        at = piece;
        break;
      }
      start += piece.length();
    }
    double length = at.length();
    return new Pipe.Fixture(
        part.id(),
        kind(part),
        fixturePoint(along),
        (at.to().x() - at.from().x()) / length,
        (at.to().y() - at.from().y()) / length);
  }
}
