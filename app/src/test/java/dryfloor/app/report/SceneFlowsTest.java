package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Ledger.Way;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Scene.Flow.Kind;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The arrows of a picture. */
class SceneFlowsTest {

  @Test
  void besideALeakStandsWhatWasLostAndNotWhatWentRound() {
    Ledger ledger =
        new Ledger(
            List.of(
                new Ledger.Entry("teeth", Way.WEIR, "display", "overflow-box", 297.5, 0),
                new Ledger.Entry("main-drain", Way.RUN, "overflow-box", "sump", 297.3, 0),
                new Ledger.Entry("main-drain", Way.LEAK, "main-drain", "tray", 0.2, 0),
                new Ledger.Entry("main-drain", Way.RUN, "overflow-box", "main-drain", 0.2, 0),
                new Ledger.Entry("return-line", Way.RUN, "sump", "display", 297.3, 0)),
            List.of(),
            3600,
            0);
    assertThat(new SceneFlows(Wording.of(SampleInstallation.get(), Units.METRIC)).of(ledger))
        .extracting(Scene.Flow::path, Scene.Flow::kind, Scene.Flow::text)
        .containsExactly(
            tuple("teeth", Kind.EDGE, "200 L"),
            tuple("main-drain", Kind.PIPE, ""),
            tuple("main-drain", Kind.PIPE_SPILL, "200 L"),
            tuple("return-line", Kind.PIPE, ""));
  }

  @Test
  void waterOfABurstOrASeamComesOutOfTheWallAndOnlyWaterOfARimOverTheRim() {
    Ledger ledger =
        new Ledger(
            List.of(
                new Ledger.Entry("display", Way.BURST, "display", "living", 0.8, 0),
                new Ledger.Entry("sump", Way.LEAK, "sump", "tray", 0.1, 0),
                new Ledger.Entry("tray", Way.RIM, "tray", "plant-room", 0.05, 0)),
            List.of(),
            3600,
            0);

    assertThat(new SceneFlows(Wording.of(SampleInstallation.get(), Units.METRIC)).of(ledger))
        .extracting(Scene.Flow::path, Scene.Flow::kind)
        .containsExactly(
            tuple("display", Kind.WALL), tuple("sump", Kind.WALL), tuple("tray", Kind.SPILL));
  }
}
