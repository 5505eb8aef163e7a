package dryfloor.app.view.panel;

import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** A choice between things of the drawing by name, or any of them. */
final class ChoiceOfId extends ComboBox<Optional<String>> {

  private final ReadOnlyObjectWrapper<Optional<String>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  private final String any;

  /** What there is to choose from, and what it is called. */
  private List<String> offered = List.of();

  private List<String> told = List.of();

  ChoiceOfId(String id, String words) {
    any = Words.of(words);
    setId(id);
    setAccessibleText(any);
    setMaxWidth(Double.MAX_VALUE);
    valueProperty()
        .addListener(
            (value, before, now) -> chosen.set(Optional.ofNullable(now).flatMap(choice -> choice)));
  }

  /** The id that is chosen, or none for any. */
  ReadOnlyObjectProperty<Optional<String>> chosen() {
    return chosen.getReadOnlyProperty();
  }

  void clear() {
    setValue(Optional.empty());
  }

  /** Offers these; keeps the choice if it is still among them. */
  void show(List<String> ids, Names names) {
    List<String> labels = ids.stream().map(names::label).toList();
    if (offered.equals(ids) && told.equals(labels)) {
      return;
    }
    offered = List.copyOf(ids);
    told = labels;
    Optional<String> before = chosen.get();
    setConverter(new ByName(names));
    List<Optional<String>> all = new ArrayList<>(List.of(Optional.<String>empty()));
    ids.stream().map(Optional::of).forEach(all::add);
    getItems().setAll(all);
    setValue(before.filter(ids::contains));
  }

  /** Ids by their names. */
  private final class ByName extends StringConverter<Optional<String>> {

    private final Names names;

    ByName(Names names) {
      this.names = names;
    }

    @Override
    public String toString(Optional<String> id) {
      return Optional.ofNullable(id).flatMap(choice -> choice).map(names::label).orElse(any);
    }

    @Override
    public Optional<String> fromString(String text) {
      return getItems().stream()
          .filter(item -> toString(item).equals(text))
          .findFirst()
          .orElse(Optional.empty());
    }
  }
}
