package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds every height in a plan that can be taken hold of. */
final class Handles {

  private static final double SAME = 1e-6;

  private final Plan plan;
  private final Installation drawing;
  private final List<Handle> handles = new ArrayList<>();

  private Handles(Plan plan) {
    this.plan = plan;
    this.drawing = plan.installation();
  }

  /** All handles, vessel by vessel, then run by run. */
  static List<Handle> of(Plan plan) {
    Handles handles = new Handles(plan);
    handles.drawing.vessels().forEach(handles::vessel);
    handles.drawing.weirs().forEach(handles::weir);
    handles.drawing.runs().forEach(handles::run);
    return List.copyOf(handles.handles);
  }

  private void vessel(Vessel vessel) {
    tank(vessel.id())
        .ifPresent(
            tank -> {
              if (!vessel.isBasin() || vessel.level() > vessel.bottom()) {
                across(Handle.Kind.LEVEL, tank, vessel.level());
              }
              across(Handle.Kind.RIM, tank, vessel.rim());
            });
  }

  private void across(Handle.Kind kind, Tank tank, double elevation) {
    handles.add(
        new Handle(
            kind,
            tank.id(),
            0,
            tank.leftAt(elevation),
            tank.rightAt(elevation),
            elevation,
            tank.bottom()));
  }

  private void weir(Weir weir) {
    tank(weir.from())
        .ifPresent(
            tank -> {
              double other = tank(weir.to()).map(Tank::middle).orElse(tank.right());
              double x =
                  other > tank.middle() ? tank.rightAt(weir.crest()) : tank.leftAt(weir.crest());
              point(Handle.Kind.WEIR, weir.id(), 0, x, weir.crest(), tank.bottom());
            });
  }

  private void run(Run run) {
    plan.pipe(run.id())
        .ifPresent(
            pipe -> {
              end(run, run.from(), 0, pipe.line().getFirst());
              waypoints(run, pipe);
              end(run, run.to(), 1, pipe.line().getLast());
              run.parts().forEach(part -> part(part, pipe));
            });
  }

  private void end(Run run, RunEnd end, int number, Point at) {
    switch (end) {
      case RunEnd.Opening opening ->
          point(
              switch (opening.kind()) {
                case PORT -> Handle.Kind.PORT;
                case STANDPIPE -> Handle.Kind.LIP;
                case FREE -> Handle.Kind.FREE_END;
              },
              run.id(),
              number,
              at.x(),
              opening.elevation(),
              bottomOf(opening.at()));
      case RunEnd.AtJunction junction -> {}
      case RunEnd.AtSupply supply -> {}
      case RunEnd.AtDrain drain -> {}
    }
  }

  /** Each waypoint is the next piece of the line that lies at its height, or the next corner. */
  private void waypoints(Run run, Pipe pipe) {
    int corner = 0;
    for (int number = 0; number < run.waypoints().size(); number++) {
      double elevation = run.waypoints().get(number).elevation();
      while (corner < pipe.line().size()
          && Math.abs(pipe.line().get(corner).y() - elevation) > SAME) {
        corner++;
      }
      if (corner == pipe.line().size()) {
        return;
      }
      Point here = pipe.line().get(corner);
      boolean level =
          corner + 1 < pipe.line().size()
              && Math.abs(pipe.line().get(corner + 1).y() - elevation) <= SAME;
      double x = level ? (here.x() + pipe.line().get(corner + 1).x()) / 2 : here.x();
      point(Handle.Kind.WAYPOINT, run.id(), number, x, elevation, 0);
      corner += level ? 2 : 1;
    }
  }

  private void part(Part part, Pipe pipe) {
    if (part instanceof Part.SiphonBreak siphonBreak) {
      pipe.fittings().stream()
          .filter(fixture -> fixture.id().equals(part.id()))
          .forEach(
              fixture ->
                  point(
                      Handle.Kind.SIPHON_BREAK,
                      part.id(),
                      0,
                      fixture.at().x(),
                      siphonBreak.elevation(),
                      siphonBreak.coveredBy().map(this::bottomOf).orElse(0.0)));
    }
  }

  private void point(
      Handle.Kind kind, String id, int number, double x, double elevation, double base) {
    handles.add(new Handle(kind, id, number, x, x, elevation, base));
  }

  private Optional<Tank> tank(String id) {
    return Optional.ofNullable(plan.tanks().get(id));
  }

  private double bottomOf(String place) {
    return tank(place)
        .map(Tank::bottom)
        .or(() -> plan.room(place).map(Plan.Room::floor).map(Floor::elevation))
        .orElse(0.0);
  }
}
