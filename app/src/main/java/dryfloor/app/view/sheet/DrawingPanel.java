package dryfloor.app.view.sheet;

import dryfloor.app.view.work.Selection;
import dryfloor.app.view.work.Work;
import dryfloor.model.check.Finding;
import dryfloor.model.file.Problem;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What is drawn: the fields of what is chosen, and what is to be looked at in the whole drawing.
 */
public final class DrawingPanel extends VBox {

  private final Selection selection;
  private final PropertySheet sheet;
  private final FindingsPanel findings;
  private final Label refused = new Label();

  /** The drawing of a window. */
  public DrawingPanel(Work work, Selection selection, ObservableValue<Units> units) {
    super(10);
    this.selection = selection;
    sheet = new PropertySheet(work, selection, units);
    findings = new FindingsPanel(work, sheet.refused(), this::goTo);
    VBox.setVgrow(sheet, Priority.ALWAYS);
    refused.setId("refused");
    refused.getStyleClass().add("field-problem");
    refused.setWrapText(true);
    complain(List.of());
    work.installation().addListener((drawing, before, now) -> complain(List.of()));
    getChildren().addAll(refused, sheet, findings);
  }

  /** Says what keeps something from being done; nothing for what is done. */
  public void complain(List<Problem> problems) {
    refused.setText(
        problems.stream()
            .map(problem -> problem.message() + "; " + problem.remedy())
            .collect(Collectors.joining("\n")));
    refused.setVisible(!problems.isEmpty());
    refused.setManaged(!problems.isEmpty());
  }

  /** Goes to what was found when the drawing was read, where it is still so. */
  public void goTo(Problem problem) {
    findings
        .all()
        .filter(finding -> finding.message().equals(problem.message()))
        .filter(finding -> finding.remedy().equals(problem.remedy()))
        .findFirst()
        .ifPresent(this::goTo);
  }

  private void goTo(Finding finding) {
    if (!finding.element().isEmpty()) {
      selection.choose(finding.element());
      sheet.goTo(finding.field());
    }
  }
}
