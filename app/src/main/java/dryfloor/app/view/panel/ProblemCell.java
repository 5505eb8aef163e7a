package dryfloor.app.view.panel;

import dryfloor.model.file.Problem;
import java.util.List;
import javafx.scene.layout.Region;

/** A problem of a file, as high as its words need. */
public final class ProblemCell extends WrappedCell<Problem> {

  @Override
  protected List<Region> parts(Problem problem) {
    return List.of(wrapped(spoken(problem)));
  }

  @Override
  protected String spoken(Problem problem) {
    return ProblemWords.of(problem);
  }
}
