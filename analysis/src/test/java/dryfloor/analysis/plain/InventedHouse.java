package dryfloor.analysis.plain;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.analysis.installation.Plan;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.Random;

/**
 * A display over a sump with a return chamber, like those that are built, with sizes by lot: the
 * crest of the return above or below the rim, a siphon break or none, a check valve or none, a sump
 * that has room for what comes down or not.
 */
final class InventedHouse {

  private final Random lot;

  private InventedHouse(long seed) {
    lot = new Random(seed);
  }

  static Installation of(long seed) {
    return new InventedHouse(seed).draw();
  }

  private double between(double low, double high) {
    return Math.round((low + lot.nextDouble() * (high - low)) * 1000) / 1000.0;
  }

  private Installation draw() {
    double rim = between(0.5, 0.8);
    double lip = rim - between(0.05, 0.09);
    double outlet = lip - between(0.03, 0.3);
    double crest = 3.8 + rim + between(-0.02, 0.15);
    double rise = crest - 0.07;
    double bore = between(0.022, 0.034);
    double baffle = between(0.25, 0.35);
    boolean breaks = lot.nextInt(3) > 0;
    boolean checks = lot.nextInt(4) == 0;
    double hole = lip - between(0.005, 0.025);
    double head = between(5.5, 9);
    double most = between(0.7, 1.4);
    return Plan.of("Invented house")
        .storey("ground", 0)
        .floor("plant-room", 20)
        .storey("upper", 3)
        .floor("hall", 40)
        .circuit("main")
        .basin("tray", box(2, 1, between(0.05, 0.2)), "plant-room")
        .vessel(
            "display",
            box(between(1, 2.4), between(0.4, 0.8), rim),
            v -> v.in("hall").raised(0.8).level(lip + 0.01).role(Vessel.Role.DISPLAY))
        .vessel(
            "sump",
            box(between(0.5, 0.9), 0.5, between(0.42, 0.6)),
            v -> v.in("tray").raised(0.02).level(baffle + 0.01))
        .vessel(
            "chamber",
            box(between(0.3, 0.7), 0.5, between(0.42, 0.6)),
            v -> v.in("tray").raised(0.02).level(baffle - 0.03))
        .weir("baffle", "sump", "chamber", baffle, 0.5)
        .run(
            "drain", r -> r.fromLip("display", lip).to("sump", 0.4).bore(0.06).length(4.5).vented())
        .run(
            "return",
            r -> {
              r.from("chamber", 0.05)
                  .to("display", outlet)
                  .bore(bore)
                  .length(rise + crest - 3.8 - outlet + 0.3)
                  .by(crest, rise + 0.2)
                  .pump("return-pump", 0.1, "main", 0, head, most, 0);
              if (checks) {
                r.checkValve("check-valve", 0.4);
              }
              if (breaks) {
                r.siphonBreak("siphon-break", rise + 0.25, "display", hole, bore / 4);
              }
            })
        .draw();
  }
}
