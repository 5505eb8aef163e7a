package dryfloor.app.report;

import dryfloor.analysis.outcome.Note;
import dryfloor.model.element.Vessel;

/** Doubts and limits of an answer as sentences. */
public final class NoteSentence {

  private final Wording wording;

  /** Sentences about this installation. */
  public NoteSentence(Wording wording) {
    this.wording = wording;
  }

  /** The sentence. */
  public String of(Note note) {
    return switch (note) {
      case Note.SiphonBreakInDoubt doubt ->
          "In doubt: no published rule says whether "
              + the(doubt.siphonBreak())
              + " is big enough to stop the siphon. Both cases were worked out; this is the worse"
              + (doubt.worked() ? " one, in which it does." : " one, in which it does not.");
      case Note.PrimingInDoubt doubt ->
          "In doubt: no published rule says whether "
              + the(doubt.run())
              + " fills and draws as a siphon as soon as so much water falls into it, or only once"
              + " more does. Both cases were worked out; this is the worse one, in which it fills "
              + (doubt.filled() ? "early." : "late or not at all.");
      case Note.DripInDoubt doubt ->
          "In doubt: if "
              + the(doubt.run())
              + " runs full where it leaks, its hole draws air and nothing drips; with air above its"
              + " water it drips. Both cases were worked out; this is the worse one, in which it "
              + (doubt.drips() ? "drips." : "does not.");
      case Note.SiphonBreakTooSmall small ->
          start(small.siphonBreak()) + " is far too small for its pipe and was taken as closed.";
      case Note.AtVapourPressure low ->
          "The pressure in "
              + the(low.run())
              + " falls so low that the water boils there, "
              + wording.amounts().length(low.along())
              + " along it at "
              + wording.amounts().elevation(low.elevation())
              + ": that holds the flow back, and the pipe must bear it.";
      case Note.RunPartlyFull open ->
          Sentences.capital(Sentences.enumerate(open.runs().stream().map(this::the).toList()))
              + (open.runs().size() > 1 ? " run" : " runs")
              + " partly full: about "
              + wording.amounts().volume(open.volume())
              + " more are on their way there when the feed stops (by Manning's formula,"
              + " n = 0.010). They are not in the levels: "
              + (open.left() > open.rise()
                  ? "add "
                      + wording.amounts().level(open.rise())
                      + " to "
                      + the(open.vessel())
                      + ", which had "
                      + wording.amounts().level(open.left())
                      + " left below its rim."
                  : the(open.vessel())
                      + " has no room for all of them, so up to as much more goes over its rim.");
      case Note.NeverRan idle ->
          start(idle.run())
              + " never ran in all this time, because nothing calls for it: evaporation is left"
              + " out. Once it runs, its water goes"
              + Landing.into(wording, idle.landing())
              + ".";
      case Note.MayFloat floating ->
          start(floating.vessel())
              + " could float up in the water around it, tear its pipes and spill. That is not"
              + " part of this answer: fasten it or weigh it down.";
      case Note.SettlesElsewhere settles ->
          "The drawing shows "
              + the(settles.vessel())
              + " at "
              + level(settles.vessel(), settles.declared())
              + "; running, it settles at "
              + level(settles.vessel(), settles.settled())
              + ".";
      case Note.IdlePump idle ->
          "When all is well "
              + the(idle.pump())
              + (idle.sucksAir() ? " runs dry" : " moves no water")
              + ". Every failure starts from there, so look at its levels, its curve and its valves"
              + " first: answers about a building that stands still say little of one that runs.";
      case Note.EmergencyDrainRuns spare ->
          "When all is well "
              + the(spare.run())
              + ", an emergency drain, carries "
              + wording.amounts().flow(spare.flow())
              + " already. Drawn like this it is no spare for the main drain: raise its lip or open"
              + " the main drain further.";
      case Note.FlushesOnAndOn flushing ->
          start(flushing.run())
              + " fills and takes air again and again. The first dozen times were followed one by"
              + " one, then what it passes on average.";
      case Note.DripsWhilePartlyFull drip ->
          start(drip.run())
              + " drips while it is only partly full. How deep its water runs over a small hole is"
              + " not known, so five times as much may drip.";
    };
  }

  /** Above the vessel's own floor, as it is drawn. */
  private String level(String id, double elevation) {
    double bottom =
        wording.installation().vessels().stream()
            .filter(vessel -> vessel.id().equals(id))
            .mapToDouble(Vessel::bottom)
            .findFirst()
            .orElse(0);
    return wording.amounts().level(elevation - bottom);
  }

  private String the(String id) {
    return wording.names().the(id);
  }

  private String start(String id) {
    return wording.names().theAtStart(id);
  }
}
