package dryfloor.app.view;

import dryfloor.app.view.edit.Connection;
import dryfloor.app.view.edit.Drafting;
import dryfloor.app.view.edit.Placeable;
import dryfloor.app.view.edit.Placed;
import dryfloor.app.view.edit.Placement;
import dryfloor.app.view.edit.Snippet;
import dryfloor.app.view.edit.Trial;
import dryfloor.app.view.picture.EditingPicture;
import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCombination;

/** What can be done with what is chosen, and what can be put into the drawing, as menus. */
final class DraftingMenus {

  /** How far apart two places are taken to be (m) that are connected without the mouse. */
  private static final double APART = 2;

  private final Work work;
  private final Selection selection;
  private final ObservableValue<Units> units;
  private final EditingPicture picture;
  private final Consumer<List<Problem>> complain;
  private Optional<String> runFrom = Optional.empty();

  /**
   * Menus for the work of a window.
   *
   * @param complain takes what keeps something from being done; nothing once it is done
   */
  DraftingMenus(
      Work work,
      Selection selection,
      ObservableValue<Units> units,
      EditingPicture picture,
      Consumer<List<Problem>> complain) {
    this.work = work;
    this.selection = selection;
    this.units = units;
    this.picture = picture;
    this.complain = complain;
    picture.setOnDelete(this::delete);
  }

  /** For the menu of changes. */
  List<MenuItem> edit() {
    return List.of(
        new SeparatorMenuItem(),
        item("edit.copy", Optional.of("Shortcut+C"), this::copy),
        item("edit.paste", Optional.of("Shortcut+V"), this::paste),
        item("edit.duplicate", Optional.of("Shortcut+Shift+D"), this::duplicate),
        item("edit.delete", Optional.empty(), this::delete));
  }

  /** A menu of all that can be put into the drawing. */
  Menu insert() {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("insert.run", Optional.of("Shortcut+R"), this::leadRun));
    items.add(item("insert.run.from", Optional.of("Shortcut+Shift+F"), this::runFromHere));
    items.add(item("insert.run.to", Optional.of("Shortcut+Shift+T"), this::runToHere));
    items.add(item("insert.tee", Optional.empty(), this::tee));
    items.add(new SeparatorMenuItem());
    for (Placeable what : Placeable.values()) {
      items.add(item("insert." + what.name(), Optional.empty(), () -> place(what)));
    }
    Menu menu = new Menu(Words.of("menu.insert"));
    menu.getItems().setAll(items);
    return menu;
  }

  private static MenuItem item(String key, Optional<String> keys, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    item.setId(key.replace('.', '-'));
    keys.map(KeyCombination::valueOf).ifPresent(item::setAccelerator);
    item.setOnAction(event -> action.run());
    return item;
  }

  private Installation drawing() {
    return work.installation().get();
  }

  private Optional<String> chosen() {
    return selection.id().get();
  }

  private void copy() {
    chosen()
        .flatMap(id -> Snippet.copy(drawing(), id, units.getValue()))
        .ifPresent(
            text -> {
              ClipboardContent content = new ClipboardContent();
              content.putString(text);
              Clipboard.getSystemClipboard().setContent(content);
            });
  }

  private void paste() {
    Optional.ofNullable(Clipboard.getSystemClipboard().getString())
        .ifPresent(text -> take(Snippet.paste(drawing(), text, chosen(), units.getValue())));
  }

  private void duplicate() {
    chosen().ifPresent(id -> take(Drafting.duplicate(drawing(), id, units.getValue())));
  }

  private void delete() {
    chosen().ifPresent(id -> take(Drafting.delete(drawing(), id)));
  }

  private void tee() {
    take(Drafting.tee(drawing(), chosen()));
  }

  private void place(Placeable what) {
    take(Placement.of(drawing(), what, chosen(), units.getValue()));
  }

  private void leadRun() {
    picture.startRun(
        (from, to, sideways) ->
            take(Connection.between(drawing(), from, to, sideways, units.getValue())));
  }

  private void runFromHere() {
    runFrom = chosen();
  }

  private void runToHere() {
    runFrom.ifPresent(
        from ->
            chosen()
                .ifPresent(
                    to ->
                        take(
                            Connection.between(
                                drawing(),
                                new Connection.End(from, elevation(from, 0.05)),
                                new Connection.End(to, elevation(to, 1)),
                                APART,
                                units.getValue()))));
  }

  /** In a vessel at a share of its water's depth (m); elsewhere it has a height of its own. */
  private double elevation(String id, double share) {
    return drawing().vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .mapToDouble(vessel -> at(vessel, share))
        .findFirst()
        .orElse(0);
  }

  private static double at(Vessel vessel, double share) {
    return vessel.bottom() + share * (vessel.level() - vessel.bottom());
  }

  private void take(Placed placed) {
    take(placed.trial());
    if (placed.trial() instanceof Trial.Sound) {
      selection.choose(placed.id());
    }
  }

  private void take(Trial trial) {
    switch (trial) {
      case Trial.Sound sound -> {
        work.change(sound.drawing());
        complain.accept(List.of());
      }
      case Trial.Refused refused -> complain.accept(refused.problems());
    }
  }
}
