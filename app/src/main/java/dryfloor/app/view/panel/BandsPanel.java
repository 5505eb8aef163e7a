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
import dryfloor.app.view.work.Exploration;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.file.UncertainValue;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * How bad and how good it can be where values carry a tolerance, and which of them matters most.
 */
public final class BandsPanel extends VBox {

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private static final double BESIDE_THE_SCROLL_BAR = 10;

  /** What was found for one drawing; nothing where it can't be run at all. */
  private record Found(
      Installation drawing, List<UncertainValue> values, Optional<BandResult> bands) {
    Found {
      values = List.copyOf(values);
    }
  }

  private final Work work;
  private final ObservableValue<Units> units;
  private final Exploration<Found> exploration;
  private final Label state = wrapped("");
  private final SearchBar search;
  private final VBox cards = new VBox(10);

  /** The bands of a window. */
  public BandsPanel(Work work, ObservableValue<Units> units) {
    super(8);
    this.work = work;
    this.units = units;
    exploration = work.exploration();
    search = new SearchBar("bands-search", Words.of("bands.search"), exploration, this::search);
    state.setId("bands-state");
    cards.setId("bands");
    cards.setPadding(new Insets(0, BESIDE_THE_SCROLL_BAR, 0, 0));
    cards.getStyleClass().add("mends");
    ScrollPane scroll = new ScrollPane(cards);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(state, search, scroll);
    exploration.state().addListener((known, before, now) -> show());
    work.chosen().addListener((failure, before, now) -> show());
    work.answers().addListener((answers, before, now) -> show());
    work.installation().addListener((drawing, before, now) -> show());
    units.addListener((property, before, now) -> show());
    show();
  }

  private void search() {
    Installation drawing = work.installation().get();
    int threads = Runtime.getRuntime().availableProcessors();
    exploration.ask(progress -> found(drawing, threads, progress));
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

  private Optional<Found> found() {
    return exploration.state().get() instanceof Exploration.State.Done<Found> done
        ? Optional.of(done.answer())
        : Optional.empty();
  }

  private boolean isUncertain() {
    return !work.installation().get().tolerances().isEmpty();
  }

  private void show() {
    search.begin().setDisable(work.wholeSweep().isEmpty() || !isUncertain());
    Optional<Found> found = found();
    boolean stale = found.filter(f -> !f.drawing().equals(work.installation().get())).isPresent();
    cards.pseudoClassStateChanged(STALE, stale);
    state.setText(sentence(found, stale));
    cards.getChildren().setAll(found.stream().flatMap(this::told).toList());
  }

  private String sentence(Optional<Found> found, boolean stale) {
    if (exploration.state().get() instanceof Exploration.State.Working<Found>) {
      return Words.of("bands.searching");
    }
    if (stale) {
      return Words.of("bands.stale");
    }
    return found
        .map(f -> f.bands().map(BandWords::summary).orElse(Words.of("bands.refused")))
        .orElseGet(() -> Words.of(isUncertain() ? "bands.hint" : "bands.exact"));
  }

  /** The failure that is looked at, what hangs on the values, and the values. */
  private Stream<Node> told(Found found) {
    BandWords words = new BandWords(found.values(), Wording.of(found.drawing(), units.getValue()));
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
    Label heading = wrapped(Words.of(key));
    heading.getStyleClass().add("text-bold");
    return nodes.isEmpty() ? Stream.empty() : Stream.concat(Stream.of(heading), nodes.stream());
  }

  private boolean isLookedAt(Band band) {
    return work.chosen().get().filter(FailureNames.id(band.failure())::equals).isPresent();
  }

  private static Node lookedAt(Band band, BandWords words) {
    Label name = wrapped(words.failure(band));
    name.getStyleClass().add("text-bold");
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
    VBox card = new VBox(4, name, told);
    card.getStyleClass().add("mend");
    return card;
  }

  private Node hanging(Band band, BandWords words) {
    Label told = wrapped(words.hangsOn(band));
    told.getStyleClass().add("mend-cost");
    Button look = new Button(Words.of("bands.look"));
    look.setAccessibleText(Words.of("bands.look.spoken", words.failure(band)));
    look.setOnAction(event -> work.choose(Optional.of(FailureNames.id(band.failure()))));
    VBox card = new VBox(4, wrapped(words.failure(band)), told, look);
    card.getStyleClass().add("mend");
    return card;
  }

  private static String answer(Figures figures) {
    Answer answer = BandWords.answer(figures);
    return answer.sign(true) + " " + answer.word();
  }

  private static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }
}
