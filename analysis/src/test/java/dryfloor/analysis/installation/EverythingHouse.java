package dryfloor.analysis.installation;

import static dryfloor.analysis.installation.Plan.box;

import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Control.LevelSwitch.Action;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel.Role;
import java.util.List;

/**
 * {@link DisplayAboveSump} with what surrounds it in life: an emergency drain, top-off from a
 * reservoir that fills itself from the mains, a bund with a drain, a sensor, a timer and two pumps
 * that share a manifold.
 */
public final class EverythingHouse {

  private EverythingHouse() {}

  public static Installation asDrawn() {
    Plan plan =
        new DisplayAboveSump()
            .withCheckValve()
            .returnWith(r -> r.joint("union", 1, 0.55, "plant-room"))
            .plan()
            .settings(
                new FailureSettings(
                    List.of(),
                    List.of(new FailureSettings.HandTopUp("sump", 0.02)),
                    List.of(),
                    1e-6,
                    1800,
                    1.5))
            .circuit("life", 3600)
            .drain("sewer", -0.4)
            .mains("mains", 1.5, 300_000)
            .basin("bund", box(1.6, 1, 0.1), "plant-room")
            .vessel(
                "reservoir",
                box(1, 0.5, 0.8),
                v -> v.in("bund").raised(0.01).level(0.6).fresh().role(Role.RESERVOIR))
            .vessel(
                "raceway",
                box(2, 0.4, 0.4),
                v -> v.in("plant-room").raised(0.6).level(0.302).role(Role.RACEWAY))
            .junction("manifold", 0.4)
            .circulationPump("stream", "display", 0.5, 5e-4, "main");
    return controls(runs(plan)).draw();
  }

  private static Plan runs(Plan plan) {
    plan.run(
            "emergency",
            r ->
                r.fromLip("display", 0.63)
                    .to("sump", 0.48)
                    .bore(0.05)
                    .length(4.5)
                    .duty(Run.Duty.EMERGENCY))
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("reservoir", 0.9)
                    .bore(0.012)
                    .length(2)
                    .floatValve("float", 1, 0.3, "reservoir", 0.6, 0.05))
        .run("bund-drain", r -> r.fromLip("bund", 0).toDrain("sewer").bore(0.04).length(1.5))
        .run(
            "top-off",
            r ->
                r.from("reservoir", 0.05)
                    .to("chamber", 0.7)
                    .bore(0.008)
                    .length(2)
                    .by(0.9, 1.2)
                    .pump("top-off-pump", 0.1, "life", 0, 2, 0.02, 0))
        .run("raceway-lip", r -> r.fromLip("raceway", 0.3).to("sump", 0.45).bore(0.05).length(1))
        .run("riser", r -> r.fromJunction("manifold").to("raceway", 0.25).length(1.5));
    for (int i = 1; i <= 2; i++) {
      String pump = "raceway-pump-" + i;
      plan.run(
          "branch-" + i,
          r -> r.from("sump", 0.05).toJunction("manifold").pump(pump, 0.2, "life", 0, 2, 0.4, 0));
    }
    return plan;
  }

  private static Plan controls(Plan plan) {
    return plan.levelSwitch("top-off-switch", "chamber", 0.15, 0.2, Action.FILLS, "top-off-pump")
        .levelSwitch("high-switch", "sump", 0.4, 0.45, Action.STOPS_WHEN_HIGH, "top-off-pump")
        .control(
            new Control.LeakSensor(
                "sensor", "sensor", "plant-room", 2e-3, 10, List.of("return-pump")))
        .control(new Control.Timer("timer", "timer", 1200, List.of("top-off-pump")));
  }
}
