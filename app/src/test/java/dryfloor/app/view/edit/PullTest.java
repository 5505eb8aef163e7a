package dryfloor.app.view.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Handle;
import dryfloor.app.drawing.Plan;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.Installation;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Heights are pulled up and down, as far as the drawing makes sense. */
class PullTest {

  private static final double EXACT = 1e-9;

  private final Installation drawing = ShippedDrawing.read("first-look/as-drawn.json");

  @Test
  void aLevelGoesWhereTheHandIsToTheMillimetre() {
    Pull.Reached reached = pull(Handle.Kind.LEVEL, "sump").to(bottom("sump") + 0.30049);

    assertThat(vessel(reached.drawing(), "sump").level())
        .isCloseTo(bottom("sump") + 0.300, within(EXACT));
    assertThat(reached.limit()).isEmpty();
  }

  @Test
  void aLevelStopsAtTheRimAndSaysWhy() {
    Pull.Reached reached = pull(Handle.Kind.LEVEL, "sump").to(bottom("sump") + 3);

    assertThat(vessel(reached.drawing(), "sump").level())
        .isCloseTo(vessel(drawing, "sump").rim(), within(EXACT));
    assertThat(reached.limit().getFirst().message()).contains("above the rim");
  }

  @Test
  void aLevelStopsAtTheBottom() {
    Pull.Reached reached = pull(Handle.Kind.LEVEL, "sump").to(bottom("sump") - 3);

    assertThat(vessel(reached.drawing(), "sump").level()).isCloseTo(bottom("sump"), within(EXACT));
  }

  @Test
  void aRimStopsAtTheWater() {
    Pull.Reached reached = pull(Handle.Kind.RIM, "top-off").to(bottom("top-off"));

    assertThat(vessel(reached.drawing(), "top-off").rim())
        .isCloseTo(vessel(drawing, "top-off").level(), within(EXACT));
  }

  @Test
  void aStandpipeLipStopsAtTheRimOfItsVessel() {
    Pull.Reached reached = pull(Handle.Kind.LIP, "main-drain").to(bottom("overflow-box") + 2);

    assertThat(((RunEnd.Opening) run(reached.drawing(), "main-drain").from()).elevation())
        .isCloseTo(vessel(drawing, "overflow-box").rim(), within(EXACT));
  }

  @Test
  void aSiphonBreakMovesAlongItsRunWithItsHeight() {
    Pull.Reached reached = pull(Handle.Kind.SIPHON_BREAK, "return-break").by(-10);

    Part.SiphonBreak before = siphonBreak(drawing);
    Part.SiphonBreak after = siphonBreak(reached.drawing());
    assertThat(after.elevation()).isCloseTo(before.elevation() - 0.010, within(EXACT));
    assertThat(after.along()).isGreaterThan(before.along());
  }

  @Test
  void aHigherCrestKeepsTheSiphonBreakAtItsHeight() {
    Pull.Reached reached = pull(Handle.Kind.WAYPOINT, "return-line").by(100);

    Run after = run(reached.drawing(), "return-line");
    assertThat(after.waypoints().getFirst().elevation())
        .isCloseTo(
            run(drawing, "return-line").waypoints().getFirst().elevation() + 0.1, within(EXACT));
    assertThat(siphonBreak(reached.drawing()).elevation())
        .isEqualTo(siphonBreak(drawing).elevation());
    assertThat(after.parts().stream().map(Part::along).toList()).isSorted();
  }

  /** Every handle of every shipped drawing, by a little and by far more than there is room for. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-look/as-drawn.json",
        "loft-reservoir/as-drawn.json",
        "coral-nursery/as-drawn.json",
        "grand-hall/as-drawn.json",
        "research-rack-room/as-drawn.json",
        "restaurant-seafood/as-drawn.json"
      })
  void noPullMakesADrawingSenseless(String scenario) {
    Installation shipped = ShippedDrawing.read(scenario);
    List<Handle> handles = handles(shipped);
    assertThat(handles).hasSizeGreaterThan(10);
    for (Handle handle : handles) {
      for (int millimetres : new int[] {-5000, -17, 17, 5000}) {
        Pull.Reached reached = new Pull(shipped, handle).by(millimetres);
        assertThat(DrawingCheck.check(reached.drawing()).stream().filter(Finding::isError))
            .as("%s by %d mm", handle, millimetres)
            .isEmpty();
      }
    }
  }

  private Pull pull(Handle.Kind kind, String id) {
    return new Pull(
        drawing,
        handles(drawing).stream()
            .filter(handle -> handle.kind() == kind && handle.id().equals(id))
            .findFirst()
            .orElseThrow());
  }

  private static List<Handle> handles(Installation drawing) {
    return BuildingPicture.of(
            Plan.of(drawing), DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""))
        .handles();
  }

  private double bottom(String vessel) {
    return vessel(drawing, vessel).bottom();
  }

  private static Vessel vessel(Installation drawing, String id) {
    return drawing.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
  }

  private static Run run(Installation drawing, String id) {
    return drawing.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static Part.SiphonBreak siphonBreak(Installation drawing) {
    return run(drawing, "return-line").parts().stream()
        .filter(Part.SiphonBreak.class::isInstance)
        .map(Part.SiphonBreak.class::cast)
        .findFirst()
        .orElseThrow();
  }
}
