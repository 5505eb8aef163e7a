package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * What helps against a run that comes apart, as far as the drawing has not got it yet: nobody is
 * told to put a union where one is, or a basin where the water lands in one. Common practice.
 */
final class PartRemedies {

  private final Drawing drawing;
  private final Installation installation;

  private PartRemedies(Installation installation) {
    this.drawing = new Drawing(installation);
    this.installation = installation;
  }

  static String of(Failure failure, Installation installation) {
    PartRemedies remedies = new PartRemedies(installation);
    if (failure instanceof JointParts parts) {
      return remedies.joint(parts);
    }
    return failure instanceof RunPartsAtLowestPoint parts
        ? remedies.lowestPoint(parts)
        : FailureRemedies.of(failure);
  }

  private String joint(JointParts failure) {
    Drawing.Fitted<Part.Joint> fitted = drawing.part(Part.Joint.class, failure.joint());
    List<String> words = new ArrayList<>();
    words.add(
        switch (fitted.part().kind()) {
          case PUSH_FIT -> "union or glued joint in place of the push-fit";
          case HOSE_CLAMP -> "second clamp on the hose, or a union in its place";
          case UNION -> "look at the union and its seal on a schedule";
          case GLUED -> "carry the pipe on both sides, so that nothing pulls at the glued joint";
        });
    below(failure).forEach(words::add);
    return String.join("; ", words);
  }

  private String lowestPoint(RunPartsAtLowestPoint failure) {
    Run run = drawing.element(Run.class, failure.run());
    List<String> words = new ArrayList<>();
    words.add("rigid pipe, well carried, in place of hose");
    below(failure).forEach(words::add);
    if (canSiphon(run) && !letsAirIn(run)) {
      words.add("siphon break at its crest");
    }
    return String.join("; ", words);
  }

  /** What is missing of a basin, a drain in it and a sensor there. */
  private List<String> below(Failure failure) {
    return FailureResolver.resolve(installation, failure).stream()
        .filter(Effect.RunParted.class::isInstance)
        .map(Effect.RunParted.class::cast)
        .findFirst()
        .map(parted -> below(parted.landing()))
        .orElse(List.of());
  }

  private List<String> below(String landing) {
    boolean basin =
        installation.vessels().stream()
            .filter(Vessel::isBasin)
            .anyMatch(vessel -> vessel.id().equals(landing));
    boolean vessel =
        installation.vessels().stream().anyMatch(other -> other.id().equals(landing)) && !basin;
    if (vessel) {
      return List.of();
    }
    if (!basin) {
      return List.of("basin with a drain and a leak sensor below it");
    }
    return isDrained(landing)
        ? List.of("a larger drain or a leak sensor in the basin below it")
        : List.of("a drain or a leak sensor in the basin below it");
  }

  private boolean isDrained(String basin) {
    return installation.runs().stream()
            .anyMatch(run -> run.from().at().equals(basin) && run.duty() != Run.Duty.FEED)
        || installation.weirs().stream().anyMatch(weir -> weir.from().equals(basin));
  }

  /** A feed that draws back out of the vessel that it feeds, once nothing pumps any more. */
  private static boolean canSiphon(Run run) {
    return run.duty() == Run.Duty.FEED
        && run.to() instanceof RunEnd.Opening
        && !(run.from() instanceof RunEnd.AtSupply);
  }

  private static boolean letsAirIn(Run run) {
    return run.vented() || run.parts().stream().anyMatch(part -> part instanceof Part.SiphonBreak);
  }
}
