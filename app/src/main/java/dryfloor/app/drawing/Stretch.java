package dryfloor.app.drawing;

import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A part of a pipe that is seen all the way, or hidden all the way behind vessels that it has
 * nothing to do with.
 */
record Stretch(List<Point> line, boolean hidden) {

  Stretch {
    line = List.copyOf(line);
  }

  /** The stretches of a pipe, from its first end on. */
  static List<Stretch> of(Plan plan, Pipe pipe) {
    List<Tank> strange = strangers(plan, pipe);
    List<Stretch> stretches = new ArrayList<>();
    for (Pipe.Piece piece : pipe.pieces()) {
      List<Double> cuts = cuts(piece, strange);
      for (int i = 1; i < cuts.size(); i++) {
        Point from = piece.from().towards(piece.to(), cuts.get(i - 1));
        Point to = piece.from().towards(piece.to(), cuts.get(i));
        Point middle = from.towards(to, 0.5);
        append(stretches, from, to, strange.stream().anyMatch(tank -> covers(tank, middle)));
      }
    }
    return stretches;
  }

  /** Vessels that the pipe neither leads to nor stands in with one that it leads to. */
  private static List<Tank> strangers(Plan plan, Pipe pipe) {
    Set<String> known = new HashSet<>();
    plan.installation().runs().stream()
        .filter(run -> run.id().equals(pipe.run()))
        .forEach(run -> meet(plan, run, known));
    return plan.tanks().values().stream().filter(tank -> !known.contains(tank.id())).toList();
  }

  private static void meet(Plan plan, Run run, Set<String> known) {
    known.add(run.from().at());
    known.add(run.to().at());
    boolean grows = true;
    while (grows) {
      grows =
          plan.installation().vessels().stream()
              .filter(vessel -> known.contains(vessel.id()))
              .map(vessel -> known.add(vessel.standsIn()))
              .reduce(false, Boolean::logicalOr);
    }
  }

  private static List<Double> cuts(Pipe.Piece piece, List<Tank> tanks) {
    Set<Double> cuts = new HashSet<>(Set.of(0.0, 1.0));
    double dx = piece.to().x() - piece.from().x();
    double dy = piece.to().y() - piece.from().y();
    for (Tank tank : tanks) {
      if (dx != 0) {
        cuts.add((tank.left() - piece.from().x()) / dx);
        cuts.add((tank.right() - piece.from().x()) / dx);
      }
      if (dy != 0) {
        cuts.add((tank.support() - piece.from().y()) / dy);
        cuts.add((tank.rim() - piece.from().y()) / dy);
      }
    }
    return cuts.stream().filter(cut -> cut >= 0 && cut <= 1).sorted().toList();
  }

  private static boolean covers(Tank tank, Point point) {
    return point.x() > tank.left()
        && point.x() < tank.right()
        && point.y() > tank.support()
        && point.y() < tank.rim();
  }

  private static void append(List<Stretch> stretches, Point from, Point to, boolean hidden) {
    if (!stretches.isEmpty() && stretches.getLast().hidden() == hidden) {
      List<Point> longer = new ArrayList<>(stretches.removeLast().line());
      longer.add(to);
      stretches.add(new Stretch(longer, hidden));
    } else {
      stretches.add(new Stretch(List.of(from, to), hidden));
    }
  }
}
