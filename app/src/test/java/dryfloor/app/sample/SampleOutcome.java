package dryfloor.app.sample;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Flows;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.analysis.outcome.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented outcomes of the sample installation. */
public final class SampleOutcome {

  private static final Ending STILL = new Ending.AtRest(240);
  private static final Trajectory NO_LINE =
      new Trajectory(List.of("sump"), new double[] {0}, new double[][] {{-2.42}}, Flows.NONE);

  private SampleOutcome() {}

  /** Water runs back through the return line until the sump and its tray run over. */
  public static Outcome wet() {
    return new Outcome(
        Verdict.WET,
        STILL,
        new Outcome.Margin(Optional.of("sump"), -0.004, 95),
        List.of(
            vessel("display", 0.85, 0.7, 0.651, 0.46, 0.81, 0.55),
            vessel("overflow-box", 0.85, 0.7, 0.52, 0.5, 0.036, 0.035),
            vessel("tray", -2.7, 0.12, 0, 0.12, 0, 0.07),
            vessel("sump", -2.68, 0.5, 0.26, 0.5, 0.218, 0.42),
            vessel("top-off", -2.7, 0.7, 0.6, 0.6, 0.075, 0.075)),
        List.of(
            new Outcome.FloorOutcome("plant-room", 0.034, 0.003, 0.034, OptionalDouble.of(130)),
            new Outcome.FloorOutcome("hall", 0, 0, 0, OptionalDouble.empty())),
        0,
        List.of(new Outcome.Passed("gully", 0.012)),
        List.of(),
        OptionalDouble.of(95),
        OptionalDouble.of(130),
        List.of(),
        new Ledger(
            List.of(
                new Ledger.Entry("teeth", Ledger.Way.WEIR, "display", "overflow-box", 0.015, 0.5),
                new Ledger.Entry("main-drain", Ledger.Way.RUN, "overflow-box", "sump", 0.016, 0.5),
                new Ledger.Entry("return-line", Ledger.Way.RUN, "display", "sump", 0.245, 8.6),
                new Ledger.Entry("tray-drain", Ledger.Way.RUN, "tray", "gully", 0.012, 0.4),
                new Ledger.Entry("sump", Ledger.Way.RIM, "sump", "tray", 0.116, 4),
                new Ledger.Entry("tray", Ledger.Way.RIM, "tray", "plant-room", 0.034, 1.2)),
            List.of(new Ledger.Standing("return-line", 0.0052, 0.0031)),
            72 * 3600,
            1e-15),
        List.of(
            event(0, What.POWER_LOST, "plant-circuit", "", -1),
            event(0, What.STOPS, "return-pump", "", -1),
            event(0, What.STOPS, "top-off-pump", "", -1),
            event(2, What.RUNS_BACKWARDS, "return-line", "sump", -1),
            event(95, What.SPILLS, "sump", "tray", 0.116),
            event(95, What.CATCHES, "tray", "", -1),
            event(130, What.SPILLS, "tray", "plant-room", 0.034),
            event(130, What.FLOOR_WET, "plant-room", "", -1),
            event(210, What.SIPHON_BREAKS, "return-break", "return-line", -1),
            event(214, What.RUN_EMPTIES, "return-line", "sump", 0.0021)),
        List.of(new Note.SiphonBreakInDoubt("return-break", false)),
        NO_LINE);
  }

  /** The same, but so much of what reached the floor goes down the gully (m, m³). */
  public static Outcome floorWith(double received, double depth, double standing, double drained) {
    Outcome wet = wet();
    List<Ledger.Entry> entries = new ArrayList<>(wet.ledger().entries());
    entries.add(new Ledger.Entry("gully", Ledger.Way.RUN, "plant-room", "gully", drained, 1));
    return new Outcome(
        wet.verdict(),
        wet.ending(),
        wet.margin(),
        wet.vessels(),
        List.of(
            new Outcome.FloorOutcome(
                "plant-room", standing, depth, received, OptionalDouble.of(130))),
        wet.beyond(),
        wet.drained(),
        wet.supplied(),
        wet.firstSpill(),
        wet.firstWetFloor(),
        wet.dryPumps(),
        new Ledger(
            entries, wet.ledger().standing(), wet.ledger().until(), wet.ledger().imbalance()),
        wet.story(),
        wet.notes(),
        wet.trajectory());
  }

  /** The tray takes it all. */
  public static Outcome caught() {
    return new Outcome(
        Verdict.CAUGHT,
        new Ending.Repeats(600, 90),
        new Outcome.Margin(Optional.of("sump"), -0.001, 300),
        List.of(
            vessel("display", 0.85, 0.7, 0.651, 0.63, 0.81, 0.78),
            vessel("tray", -2.7, 0.12, 0, 0.02, 0, 0.022),
            vessel("sump", -2.68, 0.5, 0.26, 0.5, 0.218, 0.42)),
        dryFloors(),
        0,
        List.of(new Outcome.Passed("gully", 0.003)),
        List.of(),
        OptionalDouble.of(300),
        OptionalDouble.empty(),
        List.of(new Outcome.DryPump("return-pump", 320)),
        new Ledger(List.of(), List.of(), 72 * 3600, 0),
        List.of(event(300, What.SPILLS, "sump", "tray", 0.025)),
        List.of(),
        NO_LINE);
  }

  /** Nothing leaves its vessel. */
  public static Outcome dry() {
    return new Outcome(
        Verdict.DRY,
        STILL,
        new Outcome.Margin(Optional.of("sump"), 0.012, 58),
        List.of(
            vessel("display", 0.85, 0.7, 0.651, 0.63, 0.81, 0.78),
            vessel("overflow-box", 0.85, 0.7, 0.52, 0.5, 0.036, 0.035),
            vessel("tray", -2.7, 0.12, 0, 0, 0, 0),
            vessel("sump", -2.68, 0.5, 0.26, 0.488, 0.218, 0.41),
            vessel("top-off", -2.7, 0.7, 0.6, 0.6, 0.075, 0.075)),
        dryFloors(),
        0,
        List.of(new Outcome.Passed("gully", 0)),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        new Ledger(List.of(), List.of(), 72 * 3600, 0),
        List.of(),
        List.of(new Note.SettlesElsewhere("sump", -2.42, -2.407)),
        NO_LINE);
  }

  /** No level comes closer to its rim than the display always is. */
  public static Outcome calm() {
    Outcome dry = dry();
    return new Outcome(
        dry.verdict(),
        dry.ending(),
        new Outcome.Margin(Optional.of("display"), 0.043, 0),
        dry.vessels(),
        dry.floors(),
        dry.beyond(),
        dry.drained(),
        dry.supplied(),
        dry.firstSpill(),
        dry.firstWetFloor(),
        dry.dryPumps(),
        dry.ledger(),
        dry.story(),
        dry.notes(),
        dry.trajectory());
  }

  /** The same water with another story. */
  public static Outcome telling(List<StoryEvent> story) {
    Outcome wet = wet();
    return new Outcome(
        wet.verdict(),
        wet.ending(),
        wet.margin(),
        wet.vessels(),
        wet.floors(),
        wet.beyond(),
        wet.drained(),
        wet.supplied(),
        wet.firstSpill(),
        wet.firstWetFloor(),
        wet.dryPumps(),
        wet.ledger(),
        story,
        wet.notes(),
        wet.trajectory());
  }

  /** A supply that nobody shuts off. */
  public static Outcome endless() {
    return ending(wet(), new Ending.Continues(300, 12e-3 / 3600));
  }

  /** The same water, ended in another way. */
  public static Outcome ending(Outcome wet, Ending ending) {
    return new Outcome(
        wet.verdict(),
        ending,
        wet.margin(),
        wet.vessels(),
        wet.floors(),
        0.005,
        wet.drained(),
        wet.supplied(),
        wet.firstSpill(),
        wet.firstWetFloor(),
        wet.dryPumps(),
        wet.ledger(),
        wet.story(),
        wet.notes(),
        wet.trajectory());
  }

  /** An event; a volume below zero stands for none. */
  public static StoryEvent event(
      double time, What what, String subject, String other, double volume) {
    return new StoryEvent(
        time,
        what,
        subject,
        other,
        volume < 0 ? OptionalDouble.empty() : OptionalDouble.of(volume));
  }

  private static List<Outcome.FloorOutcome> dryFloors() {
    return List.of(
        new Outcome.FloorOutcome("plant-room", 0, 0, 0, OptionalDouble.empty()),
        new Outcome.FloorOutcome("hall", 0, 0, 0, OptionalDouble.empty()));
  }

  private static Outcome.VesselOutcome vessel(
      String id,
      double bottom,
      double height,
      double before,
      double after,
      double volumeBefore,
      double volumeAfter) {
    return new Outcome.VesselOutcome(
        id,
        bottom + before,
        bottom + after,
        bottom + height,
        bottom,
        volumeBefore,
        volumeAfter,
        bottom + Math.max(before, after),
        95,
        volumeBefore > 0 ? 35 : 0,
        35,
        0);
  }
}
