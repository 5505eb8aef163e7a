package dryfloor.app.view.edit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.Installation;
import dryfloor.model.Tolerance;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.InstallationWriter;
import dryfloor.model.file.Reading;
import dryfloor.model.part.Part;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Things are put into drawings, copied, connected and taken out. */
class DraftingTest {

  private final Installation drawing = ShippedDrawing.read("first-look/as-drawn.json");

  @ParameterizedTest
  @EnumSource(Placeable.class)
  void everythingCanBePutIntoADrawing(Placeable what) {
    for (Optional<String> chosen :
        List.of(Optional.<String>empty(), Optional.of("sump"), Optional.of("return-line"))) {
      Placed placed = Placement.of(drawing, what, chosen, Units.METRIC);
      assertThat(ids(sound(placed.trial()))).contains(placed.id()).hasSize(ids(drawing).size() + 1);
    }
  }

  @Test
  void aToleranceStaysWithWhatIsDrawnAndGoesWithWhatIsTakenOut() {
    Installation measured = ShippedDrawing.read("tape-measure/as-drawn.json");
    assertThat(measured.tolerances()).hasSize(5);

    Installation edited = Heights.level(measured, "sump", 0.4);
    Installation saved = sound(FileTree.of(edited, Units.US).read());
    assertThat(saved.tolerances()).extracting(Tolerance::of).contains("sump", "return-break");

    Installation without = Removal.of(measured, "return-line");
    assertThat(without.tolerances()).extracting(Tolerance::of).containsExactly("sump");
  }

  @Test
  void aVesselIsPutIntoTheChosenBasinWhereItHasRoom() {
    Placed placed = Placement.of(drawing, Placeable.VESSEL, Optional.of("vat"), Units.METRIC);

    assertThat(sound(placed.trial()).vessels().getLast().standsIn()).isEqualTo("vat");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sump", "pan", "teeth", "return-check", "gully", "return-line", "hall"})
  void whatIsDeletedIsGoneAndTheRestMakesSense(String id) {
    Trial trial = Drafting.delete(drawing, id);

    if (id.equals("hall")) {
      assertThat(trial).isInstanceOf(Trial.Refused.class);
    } else {
      assertThat(ids(sound(trial))).doesNotContain(id);
    }
  }

  @Test
  void nothingIsDeletedThatWouldMakeTheRestSenseless() {
    Trial.Refused refused = (Trial.Refused) Drafting.delete(drawing, "return-pump");

    assertThat(refused.problems().getFirst().message()).contains("where its water is said to land");
  }

  @Test
  void whatStoodInADeletedBasinStandsOnItsFloor() {
    Installation without = sound(Drafting.delete(drawing, "vat"));

    assertThat(without.vessels())
        .filteredOn(vessel -> vessel.id().equals("sump"))
        .allMatch(vessel -> vessel.standsIn().equals("plant-room"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sump", "pan", "teeth", "return-pump", "gully", "return-line", "hall"})
  void everythingCanBeDuplicated(String id) {
    Placed placed = Drafting.duplicate(drawing, id, Units.METRIC);

    assertThat(placed.id()).isEqualTo(id + "-2");
    assertThat(ids(sound(placed.trial()))).contains(id, id + "-2");
  }

  @Test
  void aVesselIsCopiedIntoAnotherDrawing() {
    Installation other = ShippedDrawing.read("loft-reservoir/as-drawn.json");
    String text = Snippet.copy(drawing, "top-off", Units.METRIC).orElseThrow();
    Placed placed = Snippet.paste(other, text, Optional.empty(), Units.METRIC);

    assertThat(ids(sound(placed.trial()))).contains(placed.id());
  }

  @Test
  void aTextThatIsNothingOfADrawingIsRefused() {
    for (String text : List.of("", "hello", "[1]", "{\"vessels\": 3}", "{}")) {
      Placed placed = Snippet.paste(drawing, text, Optional.empty(), Units.METRIC);
      assertThat(placed.trial()).as(text).isInstanceOf(Trial.Refused.class);
    }
  }

  @Test
  void aRunIsLedFromVesselToVesselAndToTheDrain() {
    Placed up =
        Connection.between(
            drawing,
            new Connection.End("top-off", -2.6),
            new Connection.End("display", 1.4),
            2,
            Units.METRIC);
    Run feed = sound(up.trial()).runs().getLast();
    assertThat(feed.duty()).isEqualTo(Run.Duty.FEED);
    assertThat(feed.waypoints()).hasSize(1);

    Placed down =
        Connection.between(
            drawing,
            new Connection.End("vat", -2.69),
            new Connection.End("gully", -2.75),
            2,
            Units.METRIC);
    assertThat(sound(down.trial()).runs().getLast().duty()).isEqualTo(Run.Duty.DRAIN);
  }

  @Test
  void aTeeMakesTwoRunsThatHoldTheSameParts() {
    Placed placed = Drafting.tee(drawing, Optional.of("return-line"));
    Installation teed = sound(placed.trial());

    assertThat(teed.runs()).hasSize(drawing.runs().size() + 1);
    assertThat(ids(teed)).contains("return-pump", "return-break", placed.id());
  }

  private static Installation sound(Trial trial) {
    return switch (trial) {
      case Trial.Sound sound -> {
        assertThat(DrawingCheck.check(sound.drawing()).stream().filter(Finding::isError)).isEmpty();
        assertThat(
                InstallationFile.readText(InstallationWriter.text(sound.drawing(), Units.METRIC)))
            .isInstanceOf(Reading.Read.class);
        yield sound.drawing();
      }
      case Trial.Refused refused -> throw new AssertionError(refused.problems().toString());
    };
  }

  private static List<String> ids(Installation drawing) {
    List<String> ids = new ArrayList<>(drawing.elements().map(Element::id).toList());
    drawing.runs().forEach(run -> run.parts().stream().map(Part::id).forEach(ids::add));
    return ids;
  }
}
