package dryfloor.analysis.installation;

import static dryfloor.analysis.installation.Plan.box;

/**
 * A reservoir filled from the mains through a float valve, in a bund with a drain.
 *
 * <pre>
 * Mains at 1.5 m with 3 bar; 2 m of 12 mm pipe to a free end at 1.25 m; float valve of Kv 0.4.
 *   head       300 000/(997.05 · 9.80665) + 0.25 = 30.932 m
 *   the valve  h = (Q/Kv)² · 10.197 m with Q in m³/h, in velocity heads of the pipe
 *              200 (3600 A/Kv)² = 200 (3600 · 1.13097e-4/0.4)² = 207.2
 *   flow       friction after Colebrook, ends 1.5: see PipeByHand; about 0.68 m³/h
 * The reservoir, 0.5 m² with its rim at 1000 mm, stands at the float's 800 mm: 100 L of headroom.
 * The bund holds 1.6 · 1 · 0.15 m less 0.5 m² of the reservoir from 10 mm up, 0.07 m³: 170 L.
 * </pre>
 */
public final class ReservoirInABund {

  /** Time until somebody comes (s). */
  public static final double AWAY = 24 * 3600;

  /** Kinematic viscosity of the water (m²/s). */
  public static final double VISCOSITY = 0.8901e-3 / 997.05;

  private static final double HEAD = 300_000 / (997.05 * 9.80665) + 0.25;
  private static final double VALVE = 200 * Math.pow(3600 * Math.PI / 4 * 0.012 * 0.012 / 0.4, 2);

  /** What the mains bring while the float valve is open (m³/s), by hand. */
  public static final double INFLOW =
      new PipeByHand(0.012, 2, 1.5e-6, 1.5 + VALVE, VISCOSITY).flow(HEAD);

  private ReservoirInABund() {}

  /** A room of 12 m² with the mains and nothing else. */
  public static Plan room() {
    return Plan.of("Reservoir room")
        .away(AWAY)
        .storey("ground", 0)
        .floor("room", 12)
        .mains("mains", 1.5, 300_000);
  }

  /** With a bund drain of this bore (m), 1 m long, to 500 mm below the floor. */
  public static Plan drainedThrough(double bore) {
    return filled(room().drain("sewer", -0.5).basin("bund", box(1.6, 1, 0.15), "room"))
        .run("bund-drain", r -> r.fromLip("bund", 0).toDrain("sewer").bore(bore).length(1));
  }

  /** A plan with a bund, and the reservoir in it with its float valve. */
  public static Plan filled(Plan withBund) {
    return withBund
        .vessel("reservoir", box(1, 0.5, 1), v -> v.in("bund").raised(0.01).level(0.8).fresh())
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("reservoir", 1.24)
                    .bore(0.012)
                    .length(2)
                    .floatValve("float", 1, 0.4, "reservoir", 0.8, 0.05));
  }
}
