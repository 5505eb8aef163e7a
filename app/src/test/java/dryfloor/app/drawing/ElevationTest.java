package dryfloor.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ElevationTest {

  private final Installation installation = SampleInstallation.get();
  private final Plan plan = Plan.of(installation);

  @ParameterizedTest
  @EnumSource
  void noLabelCoversAnother(Units units) {
    List<Shape.Text> texts =
        SampleElevation.of(SampleOutcome.wet(), units).shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .map(Shape.Text.class::cast)
            .toList();
    for (int i = 0; i < texts.size(); i++) {
      Area area = texts.get(i).area();
      assertThat(texts.subList(i + 1, texts.size()))
          .filteredOn(other -> other.area().overlaps(area))
          .isEmpty();
    }
  }

  @Test
  void everyVesselIsAsWideAsItIs() {
    assertThat(plan.tanks().get("display")).extracting(Tank::width).isEqualTo(2.0);
    assertThat(plan.tanks().get("top-off"))
        .satisfies(tank -> assertThat(tank.width()).isCloseTo(0.4, within(1e-12)));
  }

  @Test
  void everyPipeHasItsTrueCrestAndEnds() {
    for (Run run : installation.runs()) {
      Pipe pipe = plan.pipe(run.id()).orElseThrow();
      double highest = pipe.line().stream().mapToDouble(Point::y).max().orElseThrow();
      double crest =
          run.waypoints().stream()
              .mapToDouble(Run.Waypoint::elevation)
              .max()
              .orElse(Math.max(first(pipe).y(), last(pipe).y()));
      assertThat(highest).as(run.id()).isEqualTo(Math.max(crest, first(pipe).y()));
    }
  }

  @Test
  void theSumpStandsInsideItsTray() {
    Tank tray = plan.tanks().get("tray");
    Tank sump = plan.tanks().get("sump");
    assertThat(tray).isNotNull();
    assertThat(sump).isNotNull();
    assertThat(sump).satisfies(inside -> assertThat(inside.depth()).isEqualTo(1));
    assertThat(List.of(tray, sump))
        .isSortedAccordingTo((one, other) -> Double.compare(one.left(), other.left()));
  }

  @Test
  void theSiphonBreakSitsAtItsHeight() {
    Pipe.Fixture hole =
        plan.pipe("return-line").orElseThrow().fittings().stream()
            .filter(fixture -> fixture.kind() == Pipe.Kind.SIPHON_BREAK)
            .findFirst()
            .orElseThrow();
    assertThat(hole.at().y()).isCloseTo(0.85 + 0.63, within(1e-12));
  }

  @Test
  void litresOfEveryWayAreOnThePicture() {
    assertThat(
            SampleElevation.of(SampleOutcome.wet(), Units.METRIC).shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).text()))
        .contains("15 L", "16 L", "245 L back", "12 L", "116 L", "34 L")
        .contains("▲  WET  Plant room floor: 34 L, 3 mm deep");
  }

  @Test
  void theSameDrawingGivesTheSamePicture() {
    assertThat(SvgWriter.write(SampleElevation.of(SampleOutcome.wet(), Units.METRIC)))
        .isEqualTo(SvgWriter.write(SampleElevation.of(SampleOutcome.wet(), Units.METRIC)));
  }

  private static Point first(Pipe pipe) {
    return pipe.line().getFirst();
  }

  private static Point last(Pipe pipe) {
    return pipe.line().getLast();
  }
}
