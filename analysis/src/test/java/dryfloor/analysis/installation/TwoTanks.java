package dryfloor.analysis.installation;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;

/**
 * A display on a stand beside its sump, with nothing that would catch anything.
 *
 * <pre>
 *  display  0.5 m², rim 500 mm, bottom at 1.50 m; standpipe of 50 mm with its lip at 400 mm
 *  sump     0.4 m², rim 500 mm, bottom at 0.00 m, filled to 300 mm; the pump sucks at 50 mm
 *  return   32 mm, up to its crest at 2.06 m and down to its outlet in the display
 * </pre>
 */
public final class TwoTanks {

  /** Elevation of the display's bottom (m). */
  public static final double DISPLAY = 1.5;

  private double outletAt = 0.1;
  private RunEnd.Opening.Kind outlet = RunEnd.Opening.Kind.FREE;
  private Part.Pump.Kind kind = Part.Pump.Kind.CENTRIFUGAL;
  private double[] curve = {0, 4, 0.5, 3, 1, 0};

  /** The outlet of the return goes through the wall and can't slip out. */
  public TwoTanks outletThroughTheWall() {
    outlet = RunEnd.Opening.Kind.PORT;
    return this;
  }

  /** The outlet of the return hangs over the rim, where no water goes back. */
  public TwoTanks outletOverTheRim() {
    outletAt = 0.55;
    return this;
  }

  /** A pump that brings half a litre each second, whatever stands against it. */
  public TwoTanks dosed() {
    kind = Part.Pump.Kind.DISPLACEMENT;
    curve = new double[] {0, 1000, 0.5, 0};
    return this;
  }

  public Plan plan() {
    return Plan.of("Display beside its sump")
        .storey("ground", 0)
        .floor("room", 12)
        .circuit("main")
        .vessel(
            "display",
            box(1, 0.5, 0.5),
            v -> v.in("room").raised(DISPLAY).level(0.4).role(Vessel.Role.DISPLAY))
        .vessel("sump", box(0.8, 0.5, 0.5), v -> v.in("room").level(0.3))
        .run("drain", r -> r.fromLip("display", 0.4).to("sump", 0.5).bore(0.05).length(2))
        .run("return", this::returnLine);
  }

  private void returnLine(RunPlan r) {
    double down = DISPLAY + 0.56 - (DISPLAY + outletAt);
    r.from("sump", 0.05)
        .to(new RunEnd.Opening("display", DISPLAY + outletAt, outlet))
        .length(2.5 + down)
        .by(DISPLAY + 0.56, 2.5)
        .standsIn("room");
    if (kind == Part.Pump.Kind.CENTRIFUGAL) {
      r.pump("return-pump", 0.2, "main", curve);
    } else {
      r.dosingPump("return-pump", 0.2, "main", curve);
    }
  }
}
