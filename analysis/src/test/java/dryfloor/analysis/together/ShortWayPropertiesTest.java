package dryfloor.analysis.together;

import dryfloor.analysis.generated.Building;
import dryfloor.analysis.generated.Tried;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import java.util.concurrent.CancellationException;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/** The same in buildings by chance. */
@Tried
class ShortWayPropertiesTest {

  /** Pairs of a building that are not answered within so many steps are not waited for. */
  private static final int PATIENCE = 60_000;

  @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
  void whatIsLeftOutIsWhatSimulatingItTells(@ForAll Building building) {
    Patience patience = new Patience();
    PairResult pairs;
    Inquiry inquiry;
    try {
      inquiry = Inquiry.of(building.draw(), patience::isOver);
      pairs = Pairs.of(inquiry, Scope.HIDDEN_WITH_ANY_EVENT, 1, Progress.NONE);
    } catch (BaselineProblem | CancellationException unsound) {
      Assume.that(false);
      return;
    }
    patience.renew();
    int leftOut = new ShortWay(inquiry).check(pairs);
    Statistics.label("pairs left out").collect(leftOut > 0 ? "some" : "none");
  }

  /** So many steps. */
  private static final class Patience {

    private int taken;

    boolean isOver() {
      return ++taken > PATIENCE;
    }

    void renew() {
      taken = 0;
    }
  }
}
