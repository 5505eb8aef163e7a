package dryfloor.app.view.panel;

import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import dryfloor.app.view.work.FailureFilter;
import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Narrows the list of failures: by text, verdict, circuit, storey and component. */
final class FailureFilterBar extends VBox {

  private final ReadOnlyObjectWrapper<FailureFilter> filter =
      new ReadOnlyObjectWrapper<>(FailureFilter.NONE);

  private final TextField search = new TextField();
  private final Map<Answer, ToggleButton> answers = new EnumMap<>(Answer.class);
  private final ChoiceOfId circuit = new ChoiceOfId("filter-circuit", "list.circuit");
  private final ChoiceOfId storey = new ChoiceOfId("filter-storey", "list.storey");
  private final ChoiceOfId component = new ChoiceOfId("filter-component", "list.component");

  FailureFilterBar() {
    super(8);
    search.setId("search");
    search.setPromptText(Words.of("list.search"));
    search.setAccessibleText(Words.of("list.search"));
    search.textProperty().addListener((text, before, now) -> read());
    FlowPane toggles = new FlowPane(4, 4);
    for (Answer answer : Answer.values()) {
      ToggleButton toggle = toggle(answer);
      answers.put(answer, toggle);
      toggles.getChildren().add(toggle);
    }
    Button all = new Button(Words.of("list.all"));
    all.setId("filter-all");
    all.setOnAction(clicked -> showAll());
    VBox more = new VBox(6, circuit, storey, component, all);
    TitledPane pane = new TitledPane(Words.of("list.more"), more);
    pane.setId("filter-more");
    pane.setExpanded(false);
    pane.setAnimated(false);
    for (ChoiceOfId choice : List.of(circuit, storey, component)) {
      choice.chosen().addListener((chosen, before, now) -> read());
    }
    getChildren().addAll(search, toggles, pane);
  }

  private ToggleButton toggle(Answer answer) {
    ToggleButton toggle = new ToggleButton(answer.sign(true));
    toggle.setId("filter-" + answer.name());
    toggle.setSelected(true);
    toggle.selectedProperty().addListener((selected, before, now) -> read());
    return toggle;
  }

  ReadOnlyObjectProperty<FailureFilter> filter() {
    return filter.getReadOnlyProperty();
  }

  private void read() {
    Set<Answer> shown = EnumSet.noneOf(Answer.class);
    answers.forEach(
        (answer, toggle) -> {
          if (toggle.isSelected()) {
            shown.add(answer);
          }
        });
    filter.set(
        new FailureFilter(
            Optional.ofNullable(search.getText()).orElse(""),
            shown,
            circuit.chosen().get(),
            storey.chosen().get(),
            component.chosen().get()));
  }

  private void showAll() {
    search.clear();
    answers.values().forEach(toggle -> toggle.setSelected(true));
    List.of(circuit, storey, component).forEach(ChoiceOfId::clear);
  }

  /** What there is to choose from, and how many failures each verdict has. */
  void show(SweepResult sweep) {
    Installation drawing = sweep.installation();
    Names names = Names.of(drawing);
    circuit.show(drawing.circuits().stream().map(Element::id).toList(), names);
    storey.show(drawing.storeys().stream().map(Element::id).toList(), names);
    component.show(
        sweep.results().stream()
            .flatMap(result -> FailureTraits.components(result.failure()).stream())
            .distinct()
            .toList(),
        names);
    answers.forEach((answer, toggle) -> label(answer, toggle, count(sweep, answer)));
  }

  private static long count(SweepResult sweep, Answer answer) {
    return sweep.results().stream().map(Answer::of).filter(answer::equals).count();
  }

  private static void label(Answer answer, ToggleButton toggle, long count) {
    toggle.setText(answer.sign(true) + " " + count);
    String words = Words.of("list.only", answer.word(), count);
    if (!words.equals(toggle.getAccessibleText())) {
      toggle.setAccessibleText(words);
      toggle.setTooltip(new Tooltip(words));
    }
    toggle.setVisible(count > 0);
    toggle.setManaged(count > 0);
  }
}
