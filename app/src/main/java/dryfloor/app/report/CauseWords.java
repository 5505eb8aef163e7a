package dryfloor.app.report;

import dryfloor.analysis.rehearsal.Cause;

/** What may be otherwise than drawn, in words. */
public final class CauseWords {

  private static final double PERCENT = 100;

  private final Wording wording;

  /** Words about this installation. */
  public CauseWords(Wording wording) {
    this.wording = wording;
  }

  /** The cause, to stand alone. */
  public String of(Cause cause) {
    return switch (cause) {
      case Cause.AsDrawn none -> "all as drawn";
      case Cause.CheckValveWorn worn -> the(worn.checkValve()) + " leaks back";
      case Cause.CheckValveOpen open -> the(open.checkValve()) + " does not close";
      case Cause.SiphonBreakBlocked blocked -> the(blocked.siphonBreak()) + " is blocked";
      case Cause.SiphonBreakLower lower ->
          the(lower.siphonBreak())
              + " sits "
              + wording.amounts().level(lower.by())
              + " lower than drawn";
      case Cause.MoreDisplaced displaced ->
          "rock or equipment takes "
              + Math.round(displaced.share() * PERCENT)
              + " % more of "
              + the(displaced.vessel())
              + " than drawn";
      case Cause.FilledOtherwise filled ->
          the(filled.vessel())
              + " was filled "
              + wording.amounts().level(Math.abs(filled.by()))
              + (filled.by() > 0 ? " higher" : " lower")
              + " than drawn";
      case Cause.PumpStronger stronger ->
          the(stronger.pump())
              + " runs "
              + Math.round((stronger.times() - 1) * PERCENT)
              + " % faster than its curve";
      case Cause.DrainHalfClogged clogged -> the(clogged.run()) + " is half clogged";
    };
  }

  private String the(String id) {
    return wording.names().the(id);
  }
}
