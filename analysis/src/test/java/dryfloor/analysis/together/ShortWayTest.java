package dryfloor.analysis.together;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is told of pairs without simulating them is what simulating them tells. */
class ShortWayTest {

  @Test
  void everyTwoFailuresOfAShippedDrawing() throws BaselineProblem {
    Path file = Path.of("..", "scenarios", "first-look", "as-drawn.json");

    assertThat(leftOut(Shipped.read(file), Scope.EVERY_TWO)).isGreaterThan(100);
  }

  @Test
  void everyHiddenFailureOfAHouseOfEverythingWithEveryEvent() throws BaselineProblem {
    assertThat(leftOut(EverythingHouse.asDrawn(), Scope.HIDDEN_WITH_ANY_EVENT)).isGreaterThan(100);
  }

  private static int leftOut(Installation installation, Scope scope) throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(installation, () -> false);
    return new ShortWay(inquiry).check(Pairs.of(inquiry, scope, 2, Progress.NONE));
  }
}
