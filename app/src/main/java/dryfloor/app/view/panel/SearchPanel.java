package dryfloor.app.view.panel;

import dryfloor.app.view.work.Exploration;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * A question that takes long to answer: what is asked, the button that begins it, and below what
 * was found, paler once the drawing is another one. A final panel says what it asks, and calls
 * {@link #begin} when it is complete.
 */
abstract class SearchPanel<F extends SearchPanel.Finding> extends VBox {

  /** What was found. */
  interface Finding {

    /** The drawing about which it was found. */
    Installation drawing();
  }

  /**
   * What it is about.
   *
   * @param id of the cards; the button that begins and the sentence are called after it
   * @param search on that button
   * @param searching is said while it is searched
   * @param stale is said when the drawing has changed since
   */
  record Topic(String id, String search, String searching, String stale) {}

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private static final double BESIDE_THE_SCROLL_BAR = 10;

  private final Work work;
  private final ObservableValue<Units> units;
  private final Exploration<F> exploration;
  private final Label state = wrapped("");
  private final VBox cards = new VBox(10);
  private final ScrollPane scroll = new ScrollPane(cards);

  SearchPanel(Work work, ObservableValue<Units> units) {
    super(8);
    this.work = work;
    this.units = units;
    exploration = work.exploration();
  }

  /** Lays it out and shows what is known. */
  final void begin(Topic topic) {
    SearchBar search =
        new SearchBar(topic.id() + "-search", topic.search(), exploration, this::search);
    state.setId(topic.id() + "-state");
    cards.setId(topic.id());
    cards.setPadding(new Insets(0, BESIDE_THE_SCROLL_BAR, 0, 0));
    cards.getStyleClass().add("mends");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(state, search, scroll);
    exploration.state().addListener((known, before, now) -> show(topic, search));
    work.chosen().addListener((failure, before, now) -> show(topic, search));
    work.answers().addListener((answers, before, now) -> show(topic, search));
    work.installation().addListener((drawing, before, now) -> show(topic, search));
    units.addListener((property, before, now) -> show(topic, search));
    show(topic, search);
  }

  /** Begins the search. */
  abstract void search();

  /** Whether it makes sense now, all failures being answered. */
  abstract boolean isToBeAsked();

  /** Whether what was found is about what is looked at. */
  boolean isAbout(F found) {
    return true;
  }

  /** What is said before anything is found, and of what was found in the present drawing. */
  abstract String sentence(Optional<F> found);

  /** What was found, one below the other. */
  abstract Stream<Node> cards(F found, boolean stale);

  final Work work() {
    return work;
  }

  final Units units() {
    return units.getValue();
  }

  final Exploration<F> exploration() {
    return exploration;
  }

  /** The keys must not go on to a field for text, which would keep those for undo to itself. */
  final void takeKeys() {
    scroll.requestFocus();
  }

  private void show(Topic topic, SearchBar search) {
    search.begin().setDisable(work.wholeSweep().isEmpty() || !isToBeAsked());
    Optional<F> found = found();
    boolean stale = found.filter(f -> !f.drawing().equals(work.installation().get())).isPresent();
    cards.pseudoClassStateChanged(STALE, stale);
    state.setText(state(topic, found, stale));
    List<Node> shown = found.stream().flatMap(f -> cards(f, stale)).toList();
    cards.getChildren().setAll(shown);
  }

  private Optional<F> found() {
    return exploration.state().get() instanceof Exploration.State.Done<F> done
        ? Optional.of(done.answer()).filter(this::isAbout)
        : Optional.empty();
  }

  private String state(Topic topic, Optional<F> found, boolean stale) {
    if (exploration.state().get() instanceof Exploration.State.Working<F>) {
      return topic.searching();
    }
    return stale ? topic.stale() : sentence(found);
  }

  /** Something that was found, with its heading. */
  static VBox card(Node... nodes) {
    VBox card = new VBox(4, nodes);
    card.getStyleClass().add("mend");
    return card;
  }

  static Label wrapped(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    return label;
  }

  static Label heading(String text) {
    Label label = wrapped(text);
    label.getStyleClass().add("text-bold");
    return label;
  }

  /** In softer letters below a heading. */
  static Label cost(String text) {
    Label label = wrapped(text);
    label.getStyleClass().add("mend-cost");
    return label;
  }
}
