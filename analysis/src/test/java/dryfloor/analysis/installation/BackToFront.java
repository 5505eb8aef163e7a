package dryfloor.analysis.installation;

import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** The same drawing, its file sorted another way. Parts keep their order in their run. */
public final class BackToFront {

  private BackToFront() {}

  /** Shuffles every list of elements, always the same way for the same seed. */
  public static Installation shuffled(Installation drawn, long seed) {
    Random random = new Random(seed);
    return new Installation(
        drawn.name(),
        drawn.conditions(),
        shuffled(drawn.storeys(), random),
        shuffled(drawn.floors(), random),
        shuffled(drawn.vessels(), random),
        shuffled(drawn.weirs(), random),
        shuffled(drawn.junctions(), random),
        shuffled(drawn.supplies(), random),
        shuffled(drawn.drains(), random),
        shuffled(drawn.runs(), random),
        shuffled(drawn.circulationPumps(), random),
        shuffled(drawn.circuits(), random),
        shuffled(drawn.controls(), random),
        drawn.failureSettings());
  }

  private static <T> List<T> shuffled(List<T> list, Random random) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }
}
