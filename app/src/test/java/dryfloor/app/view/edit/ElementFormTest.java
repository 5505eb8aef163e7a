package dryfloor.app.view.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import dryfloor.model.shape.Shape;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Elements are filled in field by field. */
class ElementFormTest {

  private static final String FIRST_LOOK = "first-look/as-drawn.json";

  private final Installation drawing = ShippedDrawing.read(FIRST_LOOK);

  @Test
  void aLevelIsTypedInAnyUnit() {
    assertThat(level(set("sump", "level", "10 in"))).isCloseTo(0.254, within(1e-9));
    assertThat(level(set("sump", "level", "30 cm"))).isCloseTo(0.300, within(1e-9));
    assertThat(level(set("sump", "level", "240 mm below sump.rim"))).isCloseTo(0.260, within(1e-9));
  }

  @Test
  void aBareNumberHasTheUnitThatWasThere() {
    assertThat(level(set("sump", "level", "300"))).isCloseTo(0.300, within(1e-9));
  }

  @Test
  void aLevelAboveTheRimIsRefusedAndTheProblemLiesInItsField() {
    Trial.Refused refused = (Trial.Refused) trial("sump", "level", "600 mm");

    assertThat(refused.problems()).hasSize(1);
    assertThat(form("sump").pathWithin(refused.problems().getFirst())).contains("level");
    assertThat(refused.problems().getFirst().message()).contains("above the rim");
  }

  @Test
  void nonsenseIsRefusedWithWhatWouldBeRight() {
    Trial.Refused refused = (Trial.Refused) trial("return-line", "bore", "wide");

    assertThat(refused.problems().getFirst().remedy()).contains("32 mm");
  }

  @Test
  void aRaisedVesselTakesItsWaterAndItsPortsWithIt() {
    Installation raised = set("sump", "raised", "120 mm");

    assertThat(level(raised)).isCloseTo(0.262, within(1e-9));
    assertThat(FormParts.vessel(raised, "sump").bottom())
        .isCloseTo(FormParts.vessel(drawing, "sump").bottom() + 0.1, within(1e-9));
  }

  @Test
  void aSiphonBreakThatIsTypedLowerSitsFartherAlongItsRun() {
    Installation lower = set("return-break", "at", "610 mm");

    assertThat(FormParts.part(lower, "return-break").along())
        .isGreaterThan(FormParts.part(drawing, "return-break").along());
  }

  /** What it begins with must not pass for a place on the emergency card. */
  @Test
  void aCircuitMayBeGivenWhereItsBreakerIs() {
    ElementForm form = form("plant-circuit");
    Addition breaker =
        form.additions().stream()
            .filter(addition -> addition.pointer().equals("/breaker"))
            .findFirst()
            .orElseThrow();

    Trial.Sound begun = (Trial.Sound) form.add(breaker);

    assertThat(begun.drawing().circuits().getFirst().breaker())
        .hasValueSatisfying(place -> assertThat(place).contains("still to be written"));
  }

  @Test
  void anotherIdIsUsedWhereverItWasNamed() {
    Installation renamed = set("sump", "id", "filter");

    assertThat(FormParts.vessel(renamed, "filter").name()).isEqualTo("Sump");
    assertThat(renamed.runs()).noneMatch(run -> run.to().at().equals("sump"));
  }

  @Test
  void aBoxCanBecomeACylinder() {
    Installation round = set("top-off", "shape", "frustum");

    assertThat(FormParts.vessel(round, "top-off").shape()).isInstanceOf(Shape.Frustum.class);
  }

  @Test
  void aPumpCurveGetsAnotherPointBetweenItsLast() {
    ElementForm form = form("return-pump");
    Addition point =
        form.additions().stream()
            .filter(addition -> addition.pointer().equals("/curve/-"))
            .findFirst()
            .orElseThrow();
    Installation more = ((Trial.Sound) form.add(point)).drawing();

    assertThat(((Part.Pump) FormParts.part(more, "return-pump")).curve()).hasSize(5);
  }

  @Test
  void whatMayBeLeftOutCanBeLeftOutAndGivenAgain() {
    assertThat(FormParts.vessel(set("sump", "emptyMass", ""), "sump").emptyMass()).isEmpty();
    ElementForm form = form("display");
    Addition mass =
        form.additions().stream()
            .filter(addition -> addition.pointer().equals("/emptyMass"))
            .findFirst()
            .orElseThrow();
    Installation heavier = ((Trial.Sound) form.add(mass)).drawing();
    assertThat(FormParts.vessel(heavier, "display").emptyMass()).isPresent();
  }

  /** Every field of everything that is shipped, filled in with what it holds already. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        FIRST_LOOK,
        "loft-reservoir/as-drawn.json",
        "coral-nursery/as-drawn.json",
        "research-rack-room/as-drawn.json",
        "restaurant-seafood/as-drawn.json"
      })
  void fillingInWhatIsThereChangesNothing(String scenario) {
    Installation shipped = ShippedDrawing.read(scenario);
    for (String id : FormParts.ids(shipped)) {
      ElementForm form = ElementForm.of(shipped, id, Units.METRIC).orElseThrow();
      List<Field> fields = form.fields();
      assertThat(fields).as(id).hasSizeGreaterThan(1);
      Field last = fields.getLast();
      if (last.kind() != Field.Kind.HEADING && last.kind() != Field.Kind.VARIANT) {
        assertThat(form.set(last, last.text()))
            .as(id + last.path())
            .isInstanceOf(Trial.Sound.class);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void everyFieldIsFilledInInTheReadersUnits(Units units) {
    ElementForm form = ElementForm.of(drawing, "sump", units).orElseThrow();
    String level =
        form.fields().stream()
            .filter(field -> field.path().equals("level"))
            .findFirst()
            .orElseThrow()
            .text();
    assertThat(level).endsWith(units == Units.METRIC ? "262 mm" : " in");
  }

  private ElementForm form(String id) {
    return ElementForm.of(drawing, id, Units.METRIC).orElseThrow();
  }

  private Trial trial(String id, String path, String text) {
    ElementForm form = form(id);
    Field field =
        form.fields().stream().filter(f -> f.path().equals(path)).findFirst().orElseThrow();
    return form.set(field, text);
  }

  private Installation set(String id, String path, String text) {
    return switch (trial(id, path, text)) {
      case Trial.Sound sound -> sound.drawing();
      case Trial.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }

  private static double level(Installation drawing) {
    Vessel sump = FormParts.vessel(drawing, "sump");
    return sump.level() - sump.bottom();
  }

  /** Finds things in drawings. */
  private static final class FormParts {

    static Vessel vessel(Installation drawing, String id) {
      return drawing.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
    }

    static Part part(Installation drawing, String id) {
      return drawing.runs().stream()
          .map(Run::parts)
          .flatMap(List::stream)
          .filter(p -> p.id().equals(id))
          .findFirst()
          .orElseThrow();
    }

    static List<String> ids(Installation drawing) {
      List<String> ids = new java.util.ArrayList<>(drawing.elements().map(Element::id).toList());
      drawing.runs().forEach(run -> run.parts().forEach(part -> ids.add(part.id())));
      return ids;
    }
  }
}
