package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is built in from when to when. */
class StageTest {

  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final Effect.Built HALF = new Effect.WeirNarrowed("teeth", 0.5);
  private static final Effect.Built NONE = new Effect.WeirNarrowed("teeth", 0);
  private static final Effect CUT = new Effect.CircuitOff("mains", 50);

  @Test
  void whatIsSoFromTheBeginningIsOneStage() {
    List<Effect> effects = List.of(HALF, CUT);
    assertThat(Stage.of(effects)).containsExactly(new Stage(0, NEVER, effects));
  }

  @Test
  void eachBeginningAndEachEndBeginsAStage() {
    assertThat(Stage.of(List.of(new Effect.During(10, 20, HALF), CUT)))
        .containsExactly(
            new Stage(0, 10, List.of(CUT)),
            new Stage(10, 20, List.of(HALF, CUT)),
            new Stage(20, NEVER, List.of(CUT)));
  }

  @Test
  void ofTwoThatSetTheSameThingTheLaterCounts() {
    List<Stage> stages =
        Stage.of(List.of(new Effect.During(0, NEVER, HALF), new Effect.During(10, 20, NONE)));
    assertThat(stages.stream().map(stage -> stage.effects().getFirst()))
        .containsExactly(HALF, NONE, HALF);
  }
}
