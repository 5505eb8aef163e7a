package dryfloor.analysis.benchmark;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;

/**
 * An invented house of as many components as asked for, always the same for the same number: wings
 * on two storeys, in each of them displays with a sump, a return chamber and a skimmer of their own,
 * racks that two pumps feed through a shared manifold, and a line through the whole house from which
 * floats top the chambers up.
 */
public final class GrowingHouse {

  private static final int LOOP = 11;
  private static final int RACKS = 12;
  private static final int TAP = 4;
  private static final int SMALL_LOOP = 5;
  private static final int WING = 5;
  private static final int PIECES_IN_A_WING = 4;

  private final int components;
  private final Plan plan = Plan.of("Growing house");
  private int drawn;
  private int wings;
  private int pieces;
  private int displays;
  private int taps;

  private GrowingHouse(int components) {
    this.components = components;
  }

  /**
   * Draws a house.
   *
   * @param components how many, from 10 on
   */
  public static Installation of(int components) {
    return new GrowingHouse(components).draw();
  }

  private Installation draw() {
    while (hasRoomFor(SMALL_LOOP + (pieces % PIECES_IN_A_WING == 0 ? WING : 0))) {
      if (pieces % PIECES_IN_A_WING == 0) {
        addWing();
      }
      addPiece();
      pieces++;
    }
    for (int pump = 1; drawn < components; pump++) {
      plan.circulationPump("stream-" + pump, "display-1", 0.5, 5e-4, "circuit-1");
      drawn++;
    }
    return plan.draw();
  }

  private boolean hasRoomFor(int more) {
    return drawn + more <= components;
  }

  private void addWing() {
    wings++;
    plan.storey("ground-" + wings, 0)
        .floor("plant-room-" + wings, 60)
        .storey("upper-" + wings, 3)
        .floor("hall-" + wings, 80)
        .circuit(circuit());
    drawn += WING;
  }

  private void addPiece() {
    int place = pieces % PIECES_IN_A_WING;
    if (place == 3 && hasRoomFor(TAP + 1)) {
      addTap();
    } else if (place == 1 && hasRoomFor(RACKS)) {
      addRacks();
    } else if (hasRoomFor(LOOP)) {
      addLoop();
    } else {
      addSmallLoop();
    }
  }

  private String circuit() {
    return "circuit-" + wings;
  }

  /** A display over a sump: the pump sucks in the sump itself. */
  private void addSmallLoop() {
    addDisplayAndSump(0.35);
    String n = "-" + displays;
    plan.run("return" + n, r -> returnLine(r, "sump" + n, n));
    drawn += SMALL_LOOP;
  }

  private void addDisplayAndSump(double sumpLevel) {
    displays++;
    String n = "-" + displays;
    plan.vessel(
            "display" + n,
            box(1.2 + 0.1 * (displays % 7), 0.7, 0.65),
            v -> v.in("hall-" + wings).raised(0.8).level(0.602).role(Vessel.Role.DISPLAY))
        .vessel(
            "sump" + n,
            box(0.8, 0.5, 0.5),
            v -> v.in("plant-room-" + wings).raised(0.02).level(sumpLevel))
        .run(
            "drain" + n,
            r -> r.fromLip("display" + n, 0.6).to("sump" + n, 0.47).bore(0.05).length(4.5));
  }

  private RunPlan returnLine(RunPlan run, String from, String n) {
    return run.from(from, 0.05)
        .to("display" + n, 0.55)
        .length(5.2)
        .by(0.07, 0.5)
        .by(4.55, 5.0)
        .pump("return-pump" + n, 0.2, circuit(), 0, 7, 0.6, 5, 1.2, 0);
  }

  /** The same with a return chamber behind a baffle, a siphon break and a skimmer. */
  private void addLoop() {
    addDisplayAndSump(0.31);
    String n = "-" + displays;
    plan.vessel(
            "chamber" + n,
            box(0.6, 0.5, 0.5),
            v -> v.in("plant-room-" + wings).raised(0.02).level(0.29))
        .weir("baffle" + n, "sump" + n, "chamber" + n, 0.3, 0.5)
        .run(
            "return" + n,
            r ->
                returnLine(r, "chamber" + n, n)
                    .siphonBreak("siphon-break" + n, 5.15, "display" + n, 0.585, 0.006))
        .run(
            "skimmer-line" + n,
            r ->
                r.from("sump" + n, 0.1)
                    .to("sump" + n, 0.4)
                    .pump("skimmer-pump" + n, 0.1, circuit(), 0, 1.5, 0.3, 0)
                    .skimmer("skimmer" + n, 0.5, 0.6, 0.006));
    drawn += LOOP;
  }

  /** Two racks above a sump, fed by two pumps through one manifold. */
  private void addRacks() {
    String sump = "rack-sump-" + wings;
    String manifold = "manifold-" + wings;
    plan.vessel(
            sump,
            box(1.2, 0.6, 0.5),
            v -> v.in("plant-room-" + wings).raised(0.02).level(0.35))
        .junction(manifold, 0.4);
    for (int i = 1; i <= 2; i++) {
      String n = "-" + wings + "-" + i;
      double height = 0.4 + 0.6 * i;
      plan.vessel(
              "rack" + n,
              box(2, 0.4, 0.4),
              v ->
                  v.in("plant-room-" + wings)
                      .raised(height)
                      .level(0.302)
                      .role(Vessel.Role.RACEWAY))
          .run("feed" + n, r -> feed(r, sump, manifold, n))
          .run("riser" + n, r -> r.fromJunction(manifold).to("rack" + n, 0.25).length(2.5))
          .run("lip" + n, r -> r.fromLip("rack" + n, 0.3).to(sump, 0.45).bore(0.05).length(2));
    }
    drawn += RACKS;
  }

  private void feed(RunPlan run, String sump, String manifold, String n) {
    run.from(sump, 0.05)
        .toJunction(manifold)
        .pump("feed-pump" + n, 0.2, circuit(), 0, 4, 0.5, 0);
  }

  /** A float that tops up the last return chamber, from the line through the house. */
  private void addTap() {
    taps++;
    String tap = "tap-" + taps;
    if (taps == 1) {
      plan.vessel(
          "reservoir",
          box(1, 1, 1.2),
          v -> v.in("hall-1").raised(0.2).level(0.9).fresh().role(Vessel.Role.RESERVOIR));
      drawn++;
    }
    String before = "tap-" + (taps - 1);
    plan.junction(tap, 2.5)
        .run(
            "line-" + taps,
            r ->
                (taps == 1 ? r.from("reservoir", 0.05) : r.fromJunction(before))
                    .toJunction(tap)
                    .bore(0.025)
                    .length(8))
        .run(
            "top-off-" + taps,
            r ->
                r.fromJunction(tap)
                    .to("chamber-" + displays, 0.47)
                    .bore(0.016)
                    .length(3)
                    .floatValve("float-" + taps, 2, 0.3, "chamber-" + displays, 0.2, 0.05));
    drawn += TAP;
  }
}
