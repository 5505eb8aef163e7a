package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.Tolerance;
import dryfloor.model.check.DrawingCheck;
import dryfloor.model.check.Finding;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.Size;

/** What the buildings by chance are made of: whatever a file can draw, and nothing unsound. */
@Tried
class EveryKindPropertiesTest {

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void everyBuildingPassesTheChecksOfTheDrawing(@ForAll Building building) {
    Installation drawn = building.draw();
    assertThat(DrawingCheck.check(drawn)).filteredOn(Finding::isError).isEmpty();
    assertThat(drawn.componentCount()).isBetween(3, Buildings.MOST_COMPONENTS);
  }

  /**
   * A failure that the user switches off is a wish, and a tolerance is said about what is drawn:
   * neither is a thing that is drawn.
   */
  @Property(tries = 1, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void everyKindOfThingThatCanBeDrawnIsInSomeBuilding(@ForAll @Size(300) List<Building> buildings) {
    Set<String> drawn = new TreeSet<>(Kinds.in(FailureSettings.USUAL));
    buildings.forEach(building -> drawn.addAll(Kinds.in(building.draw())));

    Set<String> possible = Kinds.possibleIn(Installation.class);
    possible.remove(FailureSettings.Skipped.class.getName());
    possible.removeAll(Kinds.possibleIn(Tolerance.class));
    assertThat(drawn).containsExactlyInAnyOrderElementsOf(possible);
  }

  @Property(tries = 1, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void everyKindOfFailureCanHappenInSomeBuilding(@ForAll @Size(300) List<Building> buildings) {
    Set<String> failing = new TreeSet<>();
    buildings.forEach(
        building ->
            FailureCatalogue.of(building.draw())
                .forEach(failure -> failing.addAll(Kinds.in(failure))));

    assertThat(failing).containsExactlyInAnyOrderElementsOf(Kinds.possibleIn(Failure.class));
  }
}
