package dryfloor.app.report;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.limit.Decider;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.limit.Scale;
import java.util.Locale;

/** What properties are called, and their values as a person reads them off. */
public final class PropertyWords {

  private final Wording wording;

  /** Words about this installation. */
  public PropertyWords(Wording wording) {
    this.wording = wording;
  }

  /** A short id to ask by: "running-level.sump". */
  public static String id(Property property) {
    return switch (property) {
      case Property.RunningLevel p -> "running-level." + p.of();
      case Property.Rim p -> "rim." + p.of();
      case Property.BasinSize p -> "basin-size." + p.of();
      case Property.ReservoirVolume p -> "reservoir-volume." + p.of();
      case Property.WeirCrest p -> "crest." + p.of();
      case Property.StandpipeLip p -> "lip." + p.of() + "." + end(p.end());
      case Property.Port p -> "opening." + p.of() + "." + end(p.end());
      case Property.SiphonBreakHeight p -> "siphon-break." + p.of();
      case Property.DrainBore p -> "bore." + p.of();
      case Property.PumpSpeed p -> "speed." + p.of();
      case Property.ValveOpening p -> "opening." + p.of();
    };
  }

  private static String end(End end) {
    return switch (end) {
      case FIRST -> "first-end";
      case SECOND -> "second-end";
    };
  }

  /** In words: "Running level of the sump". */
  public String name(Property property) {
    String of = wording.names().the(property.of());
    return switch (property) {
      case Property.RunningLevel p -> "Running level of " + of;
      case Property.Rim p -> "Rim of " + of;
      case Property.BasinSize p -> "Size of " + of;
      case Property.ReservoirVolume p -> "Water in " + of;
      case Property.WeirCrest p -> "Edge of " + of;
      case Property.StandpipeLip p -> "Lip of " + of;
      case Property.Port p -> (p.end() == End.FIRST ? "Inlet of " : "Outlet of ") + of;
      case Property.SiphonBreakHeight p -> "Height of " + of;
      case Property.DrainBore p -> "Bore of " + of;
      case Property.PumpSpeed p -> "Speed of " + of;
      case Property.ValveOpening p -> "Opening of " + of;
    };
  }

  /** A value; heights are told above the bottom from which they are measured. */
  String value(Scale scale, double value) {
    return switch (scale.kind()) {
      case HEIGHT -> wording.amounts().level(value - scale.base());
      case WIDTH -> wording.amounts().level(value);
      case VOLUME -> wording.amounts().fineVolume(value);
      case SHARE -> Math.round(value * 100) + " %";
    };
  }

  /** A difference between two values. */
  String difference(Scale scale, double difference) {
    return switch (scale.kind()) {
      case HEIGHT, WIDTH -> wording.amounts().level(difference);
      case VOLUME -> wording.amounts().fineVolume(difference);
      case SHARE -> Math.round(difference * 100) + " %";
    };
  }

  /** Rounded down, as what is less than 80 % must not be told as 80 %. */
  private static String justBelow(double share) {
    return String.format(Locale.ROOT, "%.1f %%", Math.floor(share * 1000) / 10);
  }

  /** What is wrong beyond an end of a range. */
  String decider(Scale scale, Decider decider) {
    return switch (decider) {
      case Decider.FloorWet wet ->
          FailureNames.name(wet.failure(), wording.installation()) + " wets a floor";
      case Decider.WaterLost lost ->
          FailureNames.name(lost.failure(), wording.installation())
              + " leaves "
              + wording.names().the(lost.vessel())
              + " with "
              + justBelow(lost.share())
              + " of its water";
      case Decider.SalinityOut out ->
          FailureNames.name(out.failure(), wording.installation())
              + " leaves "
              + wording.names().the(out.vessel())
              + " at "
              + wording.amounts().fineSalinity(out.salinity());
      case Decider.NoAnswer open ->
          FailureNames.name(open.failure(), wording.installation()) + " has no answer";
      case Decider.NotSound unsound ->
          "normal operation is not sound: " + new NoAnswerWords(wording).reason(unsound.reason());
      case Decider.FilledUpAgain filled ->
          "it does not stay there: it is filled up again and runs at "
              + value(scale, filled.settled());
      case Decider.PumpIdle idle ->
          wording.names().the(idle.pump())
              + (idle.sucksAir() ? " sucks air" : " moves no water")
              + " when all is well";
      case Decider.EmergencyDrainRuns spare ->
          wording.names().the(spare.run()) + ", an emergency drain, carries water when all is well";
      case Decider.NotDrawable fault ->
          "it can't be drawn so: " + new NoAnswerWords(wording).reason(fault.reason());
      case Decider.NotLookedAt end -> "not looked at further";
    };
  }
}
