package dryfloor.app.view.sheet;

import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import dryfloor.app.view.edit.Addition;
import dryfloor.app.view.edit.ElementForm;
import dryfloor.app.view.edit.Field;
import dryfloor.app.view.edit.Trial;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.check.Finding;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * Every field of the chosen element. A value that makes no sense changes nothing: it stays in its
 * field with what is wrong below, until it is put right or escape takes it back.
 */
public final class PropertySheet extends ScrollPane {

  /** While something is dragged, the fields follow once the hand rests. */
  private static final Duration REST = Duration.millis(120);

  private static final double BESIDE_THE_SCROLL_BAR = 10;

  private final Work work;
  private final Selection selection;
  private final ObservableValue<Units> units;
  private final Label heading = new Label();
  private final Label elsewhere = new Label();
  private final VBox fields = new VBox(6);
  private final MenuButton more = new MenuButton(Words.of("sheet.more"));
  private final List<FieldRow> rows = new ArrayList<>();
  private final PauseTransition rest = new PauseTransition(REST);
  private final LimitsSection limits;

  /** What was not taken over, by the field in which it was written; by none for what has none. */
  private final Map<String, List<Problem>> complaints = new LinkedHashMap<>();

  private final ObservableList<Finding> refused = FXCollections.observableArrayList();
  private String shownId = "";
  private Optional<ElementForm> form = Optional.empty();

  /** The sheet of what is chosen in a window. */
  public PropertySheet(Work work, Selection selection, ObservableValue<Units> units) {
    this.work = work;
    this.selection = selection;
    this.units = units;
    heading.setId("sheet-heading");
    heading.getStyleClass().add("title-4");
    heading.setWrapText(true);
    elsewhere.setId("sheet-problem");
    elsewhere.getStyleClass().add("field-problem");
    elsewhere.setWrapText(true);
    more.setId("sheet-more");
    limits = new LimitsSection(work, selection, units, this::showLimits);
    VBox content = new VBox(8, heading, limits, elsewhere, fields, more);
    content.setPadding(new Insets(0, BESIDE_THE_SCROLL_BAR, 0, 0));
    setContent(content);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setId("sheet");
    rest.setOnFinished(rested -> show());
    work.installation().addListener((drawing, before, now) -> rest.playFromStart());
    selection.id().addListener((id, before, now) -> show());
    units.addListener((property, before, now) -> show());
    show();
  }

  /** What was filled in and makes no sense, each with the field in which it stands. */
  ObservableList<Finding> refused() {
    return refused;
  }

  /** Goes to the field at or above a path such as {@code contents[0].to}. */
  public void goTo(String path) {
    rows.stream()
        .filter(row -> row.field().path().equals(path) || row.field().path().startsWith(path))
        .filter(row -> row.field().kind() != Field.Kind.HEADING)
        .findFirst()
        .ifPresent(row -> row.control().requestFocus());
  }

  private void show() {
    form =
        selection
            .id()
            .get()
            .flatMap(id -> ElementForm.of(work.installation().get(), id, units.getValue()));
    List<Field> now = form.map(ElementForm::fields).orElse(List.of());
    heading.setText(form.map(this::title).orElse(Words.of("sheet.none")));
    complain("");
    String id = form.map(ElementForm::id).orElse("");
    if (id.equals(shownId) && hasTheSameRows(now)) {
      for (int i = 0; i < now.size(); i++) {
        rows.get(i).follow(now.get(i));
      }
    } else {
      build(now);
    }
    shownId = id;
    tellRefused();
    List<Addition> additions = form.map(ElementForm::additions).orElse(List.of());
    more.getItems().setAll(additions.stream().map(this::item).toList());
    more.setVisible(!additions.isEmpty());
    showLimits();
  }

  /** Beside the fields that they are about; the rest above all fields. */
  private void showLimits() {
    List<LimitsSection.Told> left = new ArrayList<>(limits.told());
    for (FieldRow row : rows) {
      List<LimitsSection.Told> here =
          left.stream()
              .filter(told -> LimitPlaces.fieldOf(told.property()).test(row.field().path()))
              .toList();
      row.limit(here.stream().findFirst().map(told -> new LimitLabel(told.text(), told.stale())));
      here.stream().findFirst().ifPresent(left::remove);
    }
    limits.show(left);
  }

  /** By its name; with its id where something else is called the same. */
  private String title(ElementForm shown) {
    Names names = Names.of(work.installation().get());
    String name = names.label(shown.id());
    return names.isTheOnly(shown.id())
        ? Words.of("sheet.title", shown.kind(), name)
        : Words.of("sheet.title.shared", shown.kind(), name, shown.id());
  }

  private boolean hasTheSameRows(List<Field> now) {
    return rows.stream()
        .map(row -> row.field().pointer() + row.field().kind())
        .toList()
        .equals(now.stream().map(field -> field.pointer() + field.kind()).toList());
  }

  private void build(List<Field> now) {
    Optional<String> focused =
        rows.stream()
            .filter(row -> row.control().isFocused())
            .map(row -> row.field().path())
            .findFirst();
    rows.clear();
    now.forEach(
        field -> rows.add(new FieldRow(field, this::fillIn, this::leaveOut, this::tellRefused)));
    fields.getChildren().setAll(rows);
    focused.ifPresent(this::goTo);
  }

  private MenuItem item(Addition addition) {
    MenuItem item = new MenuItem(addition.label());
    item.setOnAction(
        event ->
            form.ifPresent(
                shown -> {
                  take(shown.add(addition), Optional.empty());
                  rest.playFromStart();
                }));
    return item;
  }

  private void fillIn(Field field, String text) {
    form.ifPresent(shown -> take(shown.set(field, text), Optional.of(field)));
    if (field.pointer().equals("/id") && isDrawn(text)) {
      selection.choose(text);
    }
  }

  private boolean isDrawn(String id) {
    return work.installation().get().elements().anyMatch(element -> element.id().equals(id))
        || work.installation().get().runs().stream()
            .flatMap(run -> run.parts().stream())
            .anyMatch(part -> part.id().equals(id));
  }

  private void leaveOut(Field field) {
    form.ifPresent(shown -> take(shown.remove(field), Optional.of(field)));
  }

  private void take(Trial trial, Optional<Field> field) {
    switch (trial) {
      case Trial.Sound sound -> {
        work.change(sound.drawing());
        show();
      }
      case Trial.Refused refused -> complain(refused.problems(), field);
    }
  }

  /** Each problem in the field in which it lies; others, and those of nothing shown, on top. */
  private void complain(List<Problem> problems, Optional<Field> field) {
    complaints.put(field.map(Field::path).orElse(""), problems);
    List<String> others = new ArrayList<>();
    for (Problem problem : problems) {
      String text = problem.message() + "; " + problem.remedy();
      Optional<FieldRow> row =
          form.flatMap(shown -> shown.pathWithin(problem))
              .flatMap(this::row)
              .filter(found -> field.map(found.field()::equals).orElse(false));
      row.ifPresentOrElse(
          found -> found.complain(text), () -> others.add(problem.path() + ": " + text));
    }
    if (!others.isEmpty()) {
      field
          .flatMap(f -> row(f.path()))
          .ifPresentOrElse(
              row -> row.complain(String.join("\n", others)),
              () -> complain(String.join("\n", others)));
    }
    tellRefused();
  }

  /** Whatever was put right or taken back is no complaint any more. */
  private void tellRefused() {
    complaints
        .keySet()
        .removeIf(
            path ->
                path.isEmpty()
                    ? !elsewhere.isVisible()
                    : row(path).filter(FieldRow::isRefused).isEmpty());
    List<Finding> now =
        complaints.entrySet().stream()
            .flatMap(entry -> entry.getValue().stream().map(p -> finding(entry.getKey(), p)))
            .toList();
    if (!now.equals(refused)) {
      refused.setAll(now);
    }
  }

  private Finding finding(String path, Problem problem) {
    return new Finding(Finding.Severity.ERROR, shownId, path, problem.message(), problem.remedy());
  }

  private Optional<FieldRow> row(String path) {
    return rows.stream().filter(row -> row.field().path().equals(path)).findFirst();
  }

  private void complain(String text) {
    elsewhere.setText(text);
    elsewhere.setVisible(!text.isEmpty());
    elsewhere.setManaged(!text.isEmpty());
  }
}
