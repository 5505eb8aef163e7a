package dryfloor.app.report;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Cost;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.SingleChange;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;

/** What mends a failure, and what that costs elsewhere, in words. */
public final class RemedyWords {

  private final Wording wording;
  private final PropertyWords properties;

  /** Words about this installation, as it is without any mend. */
  public RemedyWords(Wording wording) {
    this.wording = wording;
    this.properties = new PropertyWords(wording);
  }

  /** A stable word for the kind of a change. */
  static String kind(SingleChange change) {
    return switch (change) {
      case SingleChange.Moved moved -> "NUMBER";
      case SingleChange.AirGapMade gap -> "AIR_GAP";
      case SingleChange.SiphonBreakAdded hole -> "SIPHON_BREAK";
      case SingleChange.CutOffAdded cutOff -> "CUT_OFF";
      case SingleChange.StandpipeAdded standpipe -> "STANDPIPE";
    };
  }

  /** What to do: "Rim of the sump: 510 mm in place of 500 mm". */
  public String change(SingleChange change) {
    return switch (change) {
      case SingleChange.Moved moved ->
          properties.name(moved.property())
              + ": "
              + properties.value(moved.scale(), moved.value())
              + " in place of "
              + properties.value(moved.scale(), moved.scale().today());
      case SingleChange.AirGapMade gap ->
          "Make an air gap of "
              + level(gap.gap())
              + ": let "
              + the(gap.run())
              + " end freely over the rim of "
              + the(gap.vessel());
      case SingleChange.SiphonBreakAdded added -> siphonBreak(added);
      case SingleChange.CutOffAdded added -> cutOff(added.cutOff());
      case SingleChange.StandpipeAdded added -> standpipe(added.drain());
    };
  }

  private String siphonBreak(SingleChange.SiphonBreakAdded added) {
    Part.SiphonBreak hole = added.hole();
    String where =
        hole.coveredBy()
            .map(
                vessel ->
                    level(hole.elevation() - bottom(vessel))
                        + " above the bottom of "
                        + the(vessel)
                        + ", just under its water")
            .orElse("at its highest point, in the open, where it may spray while water is pumped");
    return "Add a siphon break to "
        + the(added.run())
        + ": "
        + hole.count()
        + " holes of "
        + level(hole.diameter())
        + " "
        + where;
  }

  private String cutOff(Control.LevelSwitch cutOff) {
    return "Add a high-level cut-off to "
        + the(cutOff.vessel())
        + " that stops "
        + Sentences.enumerate(cutOff.drives().stream().map(this::the).toList())
        + " at "
        + level(cutOff.upper() - bottom(cutOff.vessel()))
        + " and lets it run again at "
        + level(cutOff.lower() - bottom(cutOff.vessel()));
  }

  private String standpipe(Run drain) {
    RunEnd.Opening lip = (RunEnd.Opening) drain.from();
    return "Add an emergency standpipe to "
        + the(lip.at())
        + ": "
        + level(drain.bore())
        + " wide, its lip at "
        + level(lip.elevation() - bottom(lip.at()))
        + ", down to "
        + the(drain.to().at());
  }

  /** What it costs elsewhere, one sentence each; none where it costs nothing. */
  public List<String> costs(Remedy remedy) {
    return remedy.costs().stream().map(cost -> cost(cost, remedy)).toList();
  }

  private static String inPlaceOf(String now, String before) {
    return now + " in place of " + before;
  }

  private String cost(Cost cost, Remedy remedy) {
    return switch (cost) {
      case Cost.EndWorse worse -> worse(worse.changes());
      case Cost.MoreToFail more -> more(more.results(), remedy);
      case Cost.RunsElsewhere level ->
          Sentences.capital(the(level.vessel()))
              + " runs at "
              + inPlaceOf(
                  level(level.now() - bottom(level.vessel())),
                  level(level.before() - bottom(level.vessel())));
      case Cost.FlowsOtherwise flow ->
          Sentences.capital(the(flow.run()))
              + " carries "
              + inPlaceOf(wording.amounts().flow(flow.now()), wording.amounts().flow(flow.before()))
              + " when all is well";
      case Cost.LosesMore loss ->
          Sentences.capital(the(loss.vessel()))
              + " is left with "
              + inPlaceOf(
                  wording.amounts().volume(loss.now()), wording.amounts().volume(loss.before()))
              + " after: "
              + FailureNames.name(loss.failure(), wording.installation());
      case Cost.SucksAir dry ->
          Sentences.capital(the(dry.pump()))
              + " sucks air after: "
              + FailureNames.name(dry.failure(), wording.installation());
    };
  }

  private String worse(List<Changes.Change> changes) {
    Changes.Change greatest = changes.getFirst();
    String how =
        greatest.isTurned()
            ? Answer.of(greatest.before()).word() + " → " + Answer.of(greatest.now()).word()
            : greatest.moreMargin().stream()
                .filter(more -> greatest.moreWater().orElse(0) <= 0)
                .mapToObj(more -> level(-more) + " less room")
                .findFirst()
                .orElseGet(
                    () ->
                        wording.amounts().volume(greatest.moreWater().orElse(0))
                            + " more on floors");
    String what = FailureNames.name(greatest.now().failure(), wording.installation());
    return changes.size() == 1
        ? "Ends worse, though no floor gets wet that does not today: " + what + " (" + how + ")"
        : changes.size()
            + " failures end worse, though no floor gets wet that does not today, most of all: "
            + what
            + " ("
            + how
            + ")";
  }

  private static String more(List<FailureResult> results, Remedy remedy) {
    List<String> names =
        results.stream()
            .map(
                result ->
                    FailureNames.name(result.failure(), remedy.mended())
                        + (isCaught(result) ? " (caught)" : ""))
            .toList();
    return "It can fail itself, without wetting a floor: " + Sentences.enumerate(names);
  }

  private static boolean isCaught(FailureResult result) {
    return result instanceof FailureResult.Answered answered
        && answered.outcome().verdict() == Verdict.CAUGHT;
  }

  private String the(String id) {
    return wording.names().the(id);
  }

  private String level(double metres) {
    return wording.amounts().level(metres);
  }

  private double bottom(String vessel) {
    return wording.installation().vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .mapToDouble(Vessel::bottom)
        .findFirst()
        .orElseThrow();
  }
}
