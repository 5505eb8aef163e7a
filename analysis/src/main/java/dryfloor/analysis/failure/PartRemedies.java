package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What helps against a failure of a part, as far as the drawing has not got it yet and the water
 * makes it worth while: nobody is told to put a union where one is, a basin where the water lands
 * in one, or a larger drain where the drain took it all. Common practice.
 */
final class PartRemedies {

  private final Drawing drawing;
  private final Installation installation;
  private final Harm harm;

  PartRemedies(Installation installation, Harm harm) {
    this.drawing = new Drawing(installation);
    this.installation = installation;
    this.harm = harm;
  }

  String joint(JointParts failure) {
    return with(
        switch (drawing.part(Part.Joint.class, failure.joint()).part().kind()) {
          case PUSH_FIT -> "union or glued joint in place of the push-fit";
          case HOSE_CLAMP -> "second clamp on the hose, or a union in its place";
          case UNION -> "look at the union and its seal on a schedule";
          case GLUED -> "carry the pipe on both sides, so that nothing pulls at the glued joint";
        },
        below(failure));
  }

  String lowestPoint(RunPartsAtLowestPoint failure) {
    List<String> more = new ArrayList<>(below(failure));
    if (wantsASiphonBreak(drawing.run(failure.run())) && harm != Harm.NOTHING_LEAVES) {
      more.add("siphon break at its crest");
    }
    return with("rigid pipe, well carried, in place of hose", more);
  }

  String drips(Failure failure, String schedule) {
    return with(schedule, toNotice(landing(failure)));
  }

  String seal(PumpSealLeaks failure) {
    return with("look at the seal on a schedule", toNotice(landing(failure)));
  }

  String connection(DeviceConnectionLetsGo failure) {
    return with("union or clamp in place of push-fit", below(failure));
  }

  String lid(DeviceLidOpens failure) {
    return with("limit the pressure; sensor that cuts the feed pump", below(failure));
  }

  String slips(EndSlipsOut failure) {
    List<String> more = new ArrayList<>(below(failure));
    Run run = drawing.run(failure.run());
    if (failure.end() == End.SECOND && wantsASiphonBreak(run)) {
      more.add("siphon break near it");
    }
    return with("fasten the end to the vessel", more);
  }

  String sinks(OutletSinks failure) {
    Run run = drawing.run(failure.run());
    if (!canSiphon(run)) {
      return "fasten the outlet";
    }
    return with(
        "fasten the outlet",
        List.of(
            letsAirIn(run)
                ? "keep the siphon break open, on which it hangs then"
                : "siphon break at the drawn height"));
  }

  String clogs(RunClogs failure) {
    Run run = drawing.run(failure.run());
    return switch (run.duty()) {
      case FEED ->
          run.from() instanceof RunEnd.AtSupply
              ? "strainer behind the supply, cleaned on a schedule"
              : "guard at its intake, cleaned on a schedule; compare the flow with the day of"
                  + " hand-over";
      case EMERGENCY ->
          "pour water in and watch it go, on a schedule: nothing else shows that it is free";
      case DRAIN ->
          hasEmergencyDrain(run)
              ? with(
                  "strainer that is easy to clean; keep the emergency drain beside it free",
                  unlessDry("a larger emergency drain or more freeboard upstream"))
              : with(
                  "strainer that is easy to clean; second, higher drain without valve",
                  List.of("freeboard upstream"));
    };
  }

  String weirClogs(WeirClogs failure) {
    return with(
        "clean it on a schedule; guard its crest", unlessDry("longer crest; second, higher drain"));
  }

  String seam(SeamLeaks failure) {
    String place = drawing.vessel(failure.vessel()).standsIn();
    return drawing.isVessel(place)
        ? with("stand that stays level; look at the seams on a schedule", toNotice(place))
        : "basin large enough for the vessel or drain; leak sensor; level stand";
  }

  String wall(WallFails failure) {
    String place = drawing.vessel(failure.vessel()).standsIn();
    return switch (harm) {
      case NOTHING_LEAVES -> "look at it and its stand on a schedule";
      case CAUGHT -> with("look at it and its stand on a schedule; ask the insurer", below(place));
      case REACHES_A_FLOOR ->
          "drain in the floor, sill at the door; ask the insurer; no vessel guards against this";
    };
  }

  /** What stops the water where a check valve does not. */
  String checkValve(String checkValve, String generally, String schedule) {
    return letsAirIn(drawing.part(Part.CheckValve.class, checkValve).run())
        ? "do not rely on it: the siphon break in the same run stops the back-siphon, keep it open;"
            + " "
            + schedule
        : generally + "; " + schedule;
  }

  /** A pump that is switched rests most of the time: nothing runs down when it stops. */
  String pumpStops(PumpStops failure) {
    return drawing.isSwitched(failure.pump())
        ? "spare pump at hand; alarm at the low level"
        : "keep freeboard for all that runs down; spare pump at hand";
  }

  String stuckLow(LevelSwitchStuckLow failure) {
    return hasAnotherStop(failure.levelSwitch())
        ? "test the other stop of what it switches on a schedule; limit the reservoir"
        : "second, independent high-level stop in series; longest-run timer; limit the reservoir";
  }

  String drainBlocked(BasinDrainBlocked failure) {
    String place =
        drawing.run(failure.run()).from() instanceof RunEnd.Opening opening ? opening.at() : "";
    return with(
        "pour water in and watch it go, on a schedule",
        hasSensor(place)
            ? List.of("try the leak sensor in the basin too")
            : List.of("leak sensor in the basin"));
  }

  private static String with(String first, List<String> more) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(more);
    return String.join("; ", all);
  }

  private List<String> unlessDry(String words) {
    return harm == Harm.NOTHING_LEAVES ? List.of() : List.of(words);
  }

  private List<String> below(Failure failure) {
    return landing(failure).map(this::below).orElse(List.of());
  }

  /** Where the water of a failure lands. */
  private Optional<String> landing(Failure failure) {
    return FailureResolver.resolve(installation, failure).stream()
        .flatMap(effect -> landing(effect).stream())
        .findFirst();
  }

  private static Optional<String> landing(Effect effect) {
    if (effect instanceof Effect.RunParted parted) {
      return Optional.of(parted.landing());
    }
    if (effect instanceof Effect.RunLeaks leaks) {
      return Optional.of(leaks.landing());
    }
    return effect instanceof Effect.EndMoved moved
        ? Optional.of(moved.landing())
        : Optional.empty();
  }

  /** What is missing of a basin, a drain in it and a sensor there, for much water at once. */
  private List<String> below(String landing) {
    if (harm == Harm.NOTHING_LEAVES || holdsWater(landing)) {
      return List.of();
    }
    if (!drawing.isVessel(landing)) {
      return List.of("basin with a drain and a leak sensor below it");
    }
    if (harm == Harm.CAUGHT) {
      return isDrained(landing)
          ? List.of("keep the drain of the basin below it free")
          : sensor(landing);
    }
    String drain = isDrained(landing) ? "a larger drain" : "a drain";
    return List.of(
        drain + (hasSensor(landing) ? "" : " or a leak sensor") + " in the basin below it");
  }

  /** What makes somebody notice water that comes slowly. */
  private List<String> toNotice(Optional<String> landing) {
    return landing.map(this::toNotice).orElse(List.of("leak sensor below it"));
  }

  private List<String> toNotice(String landing) {
    return holdsWater(landing) ? List.of() : sensor(landing);
  }

  private List<String> sensor(String landing) {
    if (hasSensor(landing)) {
      return List.of("try the leak sensor there");
    }
    return List.of(
        drawing.isVessel(landing) ? "leak sensor in the basin below it" : "leak sensor below it");
  }

  private boolean holdsWater(String place) {
    return drawing.isVessel(place) && !drawing.isDryPlace(place);
  }

  private boolean hasSensor(String place) {
    return installation.controls().stream()
        .anyMatch(
            control -> control instanceof Control.LeakSensor sensor && sensor.in().equals(place));
  }

  /** Whether another control stops something that this switch drives. */
  private boolean hasAnotherStop(String levelSwitch) {
    List<String> driven = drawing.element(Control.LevelSwitch.class, levelSwitch).drives();
    return installation.controls().stream()
        .filter(control -> !control.id().equals(levelSwitch))
        .filter(control -> !(control instanceof Control.HandSwitch))
        .anyMatch(control -> control.drives().stream().anyMatch(driven::contains));
  }

  private boolean hasEmergencyDrain(Run drain) {
    return drain.from() instanceof RunEnd.Opening opening
        && installation.runs().stream()
            .filter(run -> run.duty() == Run.Duty.EMERGENCY)
            .anyMatch(run -> run.from().at().equals(opening.at()));
  }

  private boolean isDrained(String basin) {
    return installation.runs().stream()
            .anyMatch(run -> run.from().at().equals(basin) && run.duty() != Run.Duty.FEED)
        || installation.weirs().stream().anyMatch(weir -> weir.from().equals(basin));
  }

  private static boolean wantsASiphonBreak(Run run) {
    return canSiphon(run) && !letsAirIn(run);
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
