package dryfloor.app.view.sheet;

import dryfloor.analysis.limit.Bounds;
import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.Limits;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.BoundsText;
import dryfloor.app.report.LimitWords;
import dryfloor.app.report.PropertyWords;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.app.view.panel.SearchBar;
import dryfloor.app.view.work.Exploration;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * How far what is chosen can be changed: asked for by a button, and then told beside the fields
 * that it is about. What no field is shown for is told here.
 */
final class LimitsSection extends VBox {

  /** What was found for one element of one drawing. */
  private record Found(Installation drawing, String of, Bounds bounds, List<LimitAnswer> answers) {
    Found {
      answers = List.copyOf(answers);
    }
  }

  /** What is to be told about one property. */
  record Told(Property property, String text, boolean stale) {}

  private final Work work;
  private final Selection selection;
  private final ObservableValue<Units> units;
  private final Exploration<Found> exploration;
  private final SearchBar search;
  private final BoundsFields bounds = new BoundsFields();
  private final Label state = new Label();
  private final VBox others = new VBox(6);

  /**
   * Limits of what is chosen.
   *
   * @param changed to be run when there is something else to tell beside the fields
   */
  LimitsSection(Work work, Selection selection, ObservableValue<Units> units, Runnable changed) {
    super(6);
    this.work = work;
    this.selection = selection;
    this.units = units;
    exploration = work.exploration();
    search = new SearchBar("limits-search", Words.of("limits.search"), exploration, this::search);
    state.setId("limits-state");
    state.setWrapText(true);
    state.setMinHeight(USE_PREF_SIZE);
    others.setId("limits-others");
    getChildren().addAll(search, bounds, state, others);
    exploration.state().addListener((known, before, now) -> changed.run());
    work.answers().addListener((answers, before, now) -> show());
    show();
  }

  private List<Property> properties() {
    return selection.id().get().stream()
        .flatMap(
            id ->
                Limits.properties(work.installation().get()).stream()
                    .filter(property -> property.of().equals(id)))
        .toList();
  }

  private void search() {
    switch (bounds.read()) {
      case BoundsText.Refused refused -> bounds.complain(refused);
      case BoundsText.Meant meant -> {
        bounds.complain("");
        search(meant.bounds());
      }
    }
  }

  private void search(Bounds within) {
    Optional<SweepResult> today = work.wholeSweep();
    List<Property> properties = properties();
    if (today.isPresent() && !properties.isEmpty()) {
      int threads = Runtime.getRuntime().availableProcessors();
      exploration.ask(
          progress ->
              new Found(
                  today.get().installation(),
                  properties.getFirst().of(),
                  within,
                  Limits.of(today.get(), properties, within, threads, progress)));
    }
  }

  private Optional<Found> found() {
    return exploration.state().get() instanceof Exploration.State.Done<Found> done
        ? Optional.of(done.answer())
            .filter(found -> selection.id().get().filter(found.of()::equals).isPresent())
        : Optional.empty();
  }

  /** What is known of what is chosen, property by property. */
  List<Told> told() {
    return found().stream()
        .flatMap(
            found ->
                found.answers().stream()
                    .map(
                        answer -> new Told(answer.property(), text(found, answer), isStale(found))))
        .toList();
  }

  private boolean isStale(Found found) {
    return !found.drawing().equals(work.installation().get());
  }

  private String text(Found found, LimitAnswer answer) {
    Wording wording = Wording.of(found.drawing(), units.getValue());
    String lines =
        new LimitWords(wording)
            .of(answer).stream().map(LimitWords.Line::text).collect(Collectors.joining("\n"));
    return isStale(found) ? Words.of("limits.earlier", lines) : lines;
  }

  /** Shows what no field could take. */
  void show(List<Told> left) {
    Installation drawing = found().map(Found::drawing).orElseGet(work.installation()::get);
    PropertyWords names = new PropertyWords(Wording.of(drawing, units.getValue()));
    others
        .getChildren()
        .setAll(
            left.stream()
                .map(
                    told ->
                        new LimitLabel(
                            Words.of("limits.named", names.name(told.property()), told.text()),
                            told.stale()))
                .toList());
    show();
  }

  private void show() {
    boolean some = !properties().isEmpty();
    setVisible(some);
    setManaged(some);
    boolean lived = work.installation().get().vessels().stream().anyMatch(Bounds::isLivedIn);
    bounds.setVisible(lived);
    bounds.setManaged(lived);
    search.begin().setDisable(work.wholeSweep().isEmpty());
    String text = sentence();
    state.setText(text);
    state.setVisible(!text.isEmpty());
    state.setManaged(!text.isEmpty());
  }

  private String sentence() {
    if (exploration.state().get() instanceof Exploration.State.Working<Found>) {
      return Words.of("limits.searching");
    }
    return found().map(this::sentence).orElse("");
  }

  private String sentence(Found found) {
    if (isStale(found)) {
      return Words.of("limits.stale");
    }
    Wording wording = Wording.of(found.drawing(), units.getValue());
    return Stream.concat(
            Stream.of(Words.of("limits.found")),
            BoundsText.sentences(found.bounds(), wording).stream())
        .collect(Collectors.joining("\n"));
  }
}
