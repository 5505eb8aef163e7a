package dryfloor.analysis.failure;

import static dryfloor.analysis.failure.Failure.Degree.BY_HALF;
import static dryfloor.analysis.failure.Failure.Degree.FULLY;

import dryfloor.model.element.Run;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.stream.Stream;

/**
 * What clogs: everything that drains by gravity, every strainer, every weir. A pumped run clogs at
 * its strainer or pump only.
 */
final class ClogFailures {

  private final Drawing drawing;

  ClogFailures(Drawing drawing) {
    this.drawing = drawing;
  }

  Stream<Failure> all() {
    return Stream.of(
            Drawing.byId(drawing.installation().runs()).flatMap(this::of),
            drawing.parts(Part.Strainer.class).flatMap(fitted -> of(fitted.part())),
            Drawing.byId(drawing.installation().weirs()).flatMap(ClogFailures::of))
        .flatMap(failures -> failures);
  }

  /** The drains of dry places, each blocked. */
  Stream<Failure> basinDrains() {
    return Drawing.byId(drawing.installation().runs())
        .filter(drawing::drainsDryPlace)
        .map(run -> new Failure.BasinDrainBlocked(run.id()));
  }

  private Stream<Failure> of(Run run) {
    if (drawing.drainsDryPlace(run)) {
      return Stream.empty();
    }
    return switch (run.duty()) {
      case FEED -> Stream.empty();
      case DRAIN -> clogs(run);
      case EMERGENCY -> clogs(run);
    };
  }

  private static Stream<Failure> clogs(Run run) {
    return Stream.of(
        new Failure.RunClogs(run.id(), FULLY), new Failure.RunClogs(run.id(), BY_HALF));
  }

  private static Stream<Failure> of(Part.Strainer strainer) {
    return Stream.of(
        new Failure.StrainerClogs(strainer.id(), FULLY),
        new Failure.StrainerClogs(strainer.id(), BY_HALF));
  }

  /**
   * Teeth and narrow lips clog fully. Sponge or floss that lies against a baffle backs the water
   * up, but nothing above its edge holds them there, so it clogs by half only. Common practice.
   */
  private static Stream<Failure> of(Weir weir) {
    Failure byHalf = new Failure.WeirClogs(weir.id(), BY_HALF);
    return switch (weir.kind()) {
      case TEETH -> Stream.of(new Failure.WeirClogs(weir.id(), FULLY), byHalf);
      case LIP -> Stream.of(new Failure.WeirClogs(weir.id(), FULLY), byHalf);
      case BAFFLE -> Stream.of(byHalf);
    };
  }
}
