package dryfloor.analysis.installation;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.function.Consumer;

/**
 * A display on the upper storey over a sump with a return chamber, a skimmer and one pump.
 *
 * <pre>
 *  display  1.26 m², rim 650 mm, bottom at 3.80 m; standpipe lip at 600 mm, siphon break at 585 mm,
 *           return outlet at 550 mm
 *  sump     0.40 m², rim 500 mm, bottom at 0.02 m; baffle to the return chamber at 300 mm
 *  chamber  0.30 m², rim 500 mm, bottom at 0.02 m; the pump sucks at 50 mm
 *  return   32 mm, 5.0 m up to its crest at 4.55 m and 0.2 m down; 0.80425 L/m
 *  skimmer  32 mm, 1 m, from 100 mm to 400 mm above the sump's bottom; keeps 6 L while it runs
 * </pre>
 */
public final class DisplayAboveSump {

  private Consumer<RunPlan> moreOfTheReturn = r -> {};
  private double outletAt = 0.55;
  private double breakHole = 0.006;
  private String displayStandsIn = "hall";
  private boolean check;

  /** As drawn above. */
  public static Installation asDrawn() {
    return new DisplayAboveSump().plan().draw();
  }

  /** Height of the return's outlet above the display's bottom (m). */
  public DisplayAboveSump outletAt(double height) {
    outletAt = height;
    return this;
  }

  /** Diameter of the siphon break's hole (m). */
  public DisplayAboveSump breakHole(double diameter) {
    breakHole = diameter;
    return this;
  }

  public DisplayAboveSump withCheckValve() {
    check = true;
    return this;
  }

  /** A basin of 1.8 m² with a rim of 5 mm under the display. */
  public DisplayAboveSump withBasinUnderTheDisplay() {
    displayStandsIn = "display-tray";
    return this;
  }

  public DisplayAboveSump returnWith(Consumer<RunPlan> more) {
    moreOfTheReturn = more;
    return this;
  }

  public Plan plan() {
    Plan plan =
        Plan.of("Display above sump")
            .storey("ground", 0)
            .floor("plant-room", 20)
            .storey("upper", 3)
            .floor("hall", 40)
            .circuit("main")
            .circuit("skimming")
            .basin("tray", box(2, 0.8, 0.06), "plant-room");
    if (displayStandsIn.equals("display-tray")) {
      plan.basin("display-tray", box(2, 0.9, 0.005), "hall");
    }
    return plan.vessel(
            "display",
            box(1.8, 0.7, 0.65),
            v -> v.in(displayStandsIn).raised(0.8).level(0.602).role(Vessel.Role.DISPLAY))
        .vessel("sump", box(0.8, 0.5, 0.5), v -> v.in("tray").raised(0.02).level(0.31))
        .vessel("chamber", box(0.6, 0.5, 0.5), v -> v.in("tray").raised(0.02).level(0.29))
        .weir("baffle", "sump", "chamber", 0.3, 0.5)
        .run("drain", r -> r.fromLip("display", 0.6).to("sump", 0.47).bore(0.05).length(4.5))
        .run("return", this::returnLine)
        .run(
            "skimmer-line",
            r ->
                r.from("sump", 0.1)
                    .to("sump", 0.4)
                    .pump("skimmer-pump", 0.1, "skimming", 0, 1.5, 0.3, 0)
                    .skimmer("skimmer", 0.5, 0.6, 0.006));
  }

  private void returnLine(RunPlan r) {
    r.from("chamber", 0.05)
        .to("display", outletAt)
        .length(5.75 - outletAt)
        .by(0.07, 0.5)
        .by(4.55, 5.0)
        .pump("return-pump", 0.2, "main", 0, 7, 0.6, 5, 1.2, 0);
    if (check) {
      r.checkValve("check-valve", 0.4);
    }
    r.siphonBreak("siphon-break", 5.15, "display", 0.585, breakHole);
    moreOfTheReturn.accept(r);
  }
}
