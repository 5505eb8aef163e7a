package dryfloor.app.drawing;

import dryfloor.app.drawing.Shape.Text.Anchor;
import java.util.List;
import java.util.Optional;

/** Pipes, what is in them, and their ends. */
final class PipePainter {

  private final Paper paper;
  private final Scene scene;
  private final Sheet sheet;
  private final Symbols symbols;

  PipePainter(Paper paper, Scene scene, Sheet sheet) {
    this.paper = paper;
    this.scene = scene;
    this.sheet = sheet;
    this.symbols = new Symbols(sheet);
  }

  void paint() {
    paper.plan().pipes().forEach(this::pipe);
    paper.plan().pipes().stream().flatMap(pipe -> pipe.fittings().stream()).forEach(this::fixture);
    paper
        .plan()
        .ends()
        .forEach(
            (id, point) -> symbols.end(kind(id), paper.at(point), scene.failed().contains(id)));
  }

  private void pipe(Pipe pipe) {
    boolean carries = scene.flows().stream().anyMatch(flow -> flow.path().equals(pipe.run()));
    for (Stretch stretch : Stretch.of(paper.plan(), pipe)) {
      stretch(stretch, carries, scene.failed().contains(pipe.run()));
    }
  }

  private void stretch(Stretch stretch, boolean carries, boolean failed) {
    List<Point> line = stretch.line().stream().map(paper::at).toList();
    if (stretch.hidden()) {
      sheet.addKeptClear(new Shape.Line(line, false, Style.PIPE_BEHIND));
      return;
    }
    sheet.add(new Shape.Line(line, false, Style.PIPE_EDGE));
    sheet.addKeptClear(new Shape.Line(line, false, carries ? Style.PIPE : Style.PIPE_DRY));
    if (failed) {
      sheet.add(new Shape.Line(line, false, Style.FAILED));
    }
  }

  private void fixture(Pipe.Fixture fixture) {
    symbols.fixture(fixture, paper.at(fixture.at()), scene.failed().contains(fixture.id()));
  }

  private Symbols.End kind(String id) {
    if (paper.plan().installation().supplies().stream().anyMatch(s -> s.id().equals(id))) {
      return Symbols.End.SUPPLY;
    }
    if (paper.plan().installation().junctions().stream().anyMatch(j -> j.id().equals(id))) {
      return Symbols.End.JUNCTION;
    }
    return paper.plan().installation().drains().stream().anyMatch(d -> d.id().equals(id))
        ? Symbols.End.DRAIN
        : Symbols.End.FLOOR_OPENING;
  }

  void label() {
    paper.plan().pipes().stream()
        .flatMap(pipe -> pipe.fittings().stream())
        .forEach(fixture -> state(fixture.id(), paper.at(fixture.at())));
    paper.plan().ends().forEach((id, point) -> state(id, paper.at(point)));
  }

  private void state(String id, Point at) {
    Optional.ofNullable(scene.states().get(id))
        .ifPresent(
            text ->
                sheet.label(
                    new Label(
                        at,
                        List.of(
                            new Sheet.LabelLine(
                                text,
                                10.5,
                                scene.failed().contains(id) ? Style.WET_TEXT : Style.NOTE)),
                        List.of(
                            new Label.Wish(at.moved(12, -7), Anchor.START),
                            new Label.Wish(at.moved(-12, -7), Anchor.END),
                            new Label.Wish(at.moved(12, -20), Anchor.START),
                            new Label.Wish(at.moved(12, 7), Anchor.START),
                            new Label.Wish(at.moved(-12, -20), Anchor.END),
                            new Label.Wish(at.moved(-12, 7), Anchor.END)),
                        !scene.failed().contains(id))));
  }
}
