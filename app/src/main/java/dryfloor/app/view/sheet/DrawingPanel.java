package dryfloor.app.view.sheet;

import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.check.Finding;
import dryfloor.model.unit.Units;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is drawn: the fields of what is chosen, and what is to be looked at in the whole drawing. */
public final class DrawingPanel extends VBox {

  private final Selection selection;
  private final PropertySheet sheet;

  /** The drawing of a window. */
  public DrawingPanel(Work work, Selection selection, ObservableValue<Units> units) {
    super(10);
    this.selection = selection;
    sheet = new PropertySheet(work, selection, units);
    VBox.setVgrow(sheet, Priority.ALWAYS);
    getChildren().addAll(sheet, new FindingsPanel(work, this::goTo));
  }

  private void goTo(Finding finding) {
    if (!finding.element().isEmpty()) {
      selection.choose(finding.element());
      sheet.goTo(finding.field());
    }
  }
}
