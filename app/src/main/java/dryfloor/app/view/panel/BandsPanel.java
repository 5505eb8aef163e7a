package dryfloor.app.view.panel;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Bands;
import dryfloor.analysis.band.Figures;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.app.report.Answer;
import dryfloor.app.report.BandWords;
import dryfloor.app.report.ReadAgain;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.file.UncertainValue;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;

/**
 * How bad and how good it can be where values carry a tolerance, and which of them matters most.
 */
public final class BandsPanel extends SearchPanel<BandsPanel.Found> {

  /** What was found for one drawing; nothing where it can't be run at all. */
  record Found(Installation drawing, List<UncertainValue> values, Optional<BandResult> bands)
      implements SearchPanel.Finding {
    Found {
      values = List.copyOf(values);
    }
  }

  /** The bands of a window. */
  public BandsPanel(Work work, ObservableValue<Units> units) {
    super(work, units);
    begin(
        new Topic(
            "bands",
            Words.of("bands.search"),
            Words.of("bands.searching"),
            Words.of("bands.stale")));
  }

  @Override
  void search() {
    Installation drawing = work().installation().get();
    int threads = Runtime.getRuntime().availableProcessors();
    exploration().ask(progress -> found(drawing, threads, progress));
  }

  private static Found found(Installation drawing, int threads, Progress progress) {
    ReadAgain again = ReadAgain.of(drawing);
    try {
      return new Found(
          drawing,
          again.named(),
          Optional.of(Bands.of(again, Optional.empty(), threads, progress)));
    } catch (BaselineProblem spillsWhenAllIsWell) {
      return new Found(drawing, again.named(), Optional.empty());
    }
  }

  @Override
  boolean isToBeAsked() {
    return !work().installation().get().tolerances().isEmpty();
  }

  @Override
  String sentence(Optional<Found> found) {
    return found
        .map(f -> f.bands().map(BandWords::summary).orElse(Words.of("bands.refused")))
        .orElseGet(() -> Words.of(isToBeAsked() ? "bands.hint" : "bands.exact"));
  }

  /** The failure that is looked at, what hangs on the values, and the values. */
  @Override
  Stream<Node> cards(Found found, boolean stale) {
    BandWords words = new BandWords(found.values(), Wording.of(found.drawing(), units()));
    return found.bands().stream().flatMap(bands -> told(bands, words));
  }

  private Stream<Node> told(BandResult bands, BandWords words) {
    List<Node> hanging =
        bands.bands().stream().filter(Band::isOpen).map(band -> hanging(band, words)).toList();
    List<Node> notJudged =
        bands.unsound().stream()
            .<Node>map(point -> wrapped(Words.of("bands.unjudged", words.where(point.point()))))
            .toList();
    return Stream.of(
            bands.bands().stream().filter(this::isLookedAt).map(band -> lookedAt(band, words)),
            headed("bands.hanging", hanging),
            headed("bands.notJudged", notJudged),
            headed(
                "bands.values",
                bands.weights().stream()
                    .<Node>map(weight -> wrapped(words.value(weight)))
                    .toList()),
            Stream.<Node>of(wrapped(BandWords.reach(bands))))
        .flatMap(nodes -> nodes);
  }

  private static Stream<Node> headed(String key, List<Node> nodes) {
    return nodes.isEmpty()
        ? Stream.empty()
        : Stream.concat(Stream.of(heading(Words.of(key))), nodes.stream());
  }

  private boolean isLookedAt(Band band) {
    return work().chosen().get().filter(FailureNames.id(band.failure())::equals).isPresent();
  }

  private static Node lookedAt(Band band, BandWords words) {
    Label told =
        wrapped(
            Words.of(
                "bands.band",
                answer(band.worst().figures()),
                answer(band.best().figures()),
                words.onFloors(band),
                words.margin(band),
                words.mattersMost(band).orElse(Words.of("bands.nothing"))));
    told.setId("band-looked-at");
    return card(heading(words.failure(band)), told);
  }

  private Node hanging(Band band, BandWords words) {
    Button look = new Button(Words.of("bands.look"));
    look.setAccessibleText(Words.of("bands.look.spoken", words.failure(band)));
    look.setOnAction(event -> work().choose(Optional.of(FailureNames.id(band.failure()))));
    return card(wrapped(words.failure(band)), cost(words.hangsOn(band)), look);
  }

  private static String answer(Figures figures) {
    Answer answer = BandWords.answer(figures);
    return answer.sign(true) + " " + answer.word();
  }
}
