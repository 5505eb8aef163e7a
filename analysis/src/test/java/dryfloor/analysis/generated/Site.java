package dryfloor.analysis.generated;

import dryfloor.analysis.installation.Plan;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Run;
import dryfloor.model.part.Power;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** A building being drawn. What units share is drawn when the first of them asks for it. */
final class Site {

  static final String PLANT_ROOM = "plant-room";

  final Plan plan;
  private final Premises premises;
  private final Set<String> drawn = new HashSet<>();
  private final List<FailureSettings.HandTopUp> topUps = new ArrayList<>();

  Site(Premises premises) {
    this.premises = premises;
    plan =
        Plan.of("Building by chance")
            .celsius(premises.celsius())
            .away(premises.away() * 3600.0)
            .storey("ground", 0)
            .floor(
                PLANT_ROOM, Unit.dm2(premises.plantRoom()), Unit.mm(premises.sill()), Plan.BEYOND);
    if (premises.floorDrain()) {
      String sewer = sewer();
      plan.run(
          "floor-drain",
          r -> r.fromLip(PLANT_ROOM, 0).toDrain(sewer).bore(0.05).length(1).standsIn(PLANT_ROOM));
    }
  }

  /** The floor of the upper storey, 3 m up. */
  String hall() {
    if (drawn.add("hall")) {
      plan.storey("upper", 3)
          .floor(
              "hall",
              40,
              Unit.mm(premises.sill()),
              premises.hallSpillsDown() ? PLANT_ROOM : Plan.BEYOND);
    }
    return "hall";
  }

  String sewer() {
    if (drawn.add("sewer")) {
      plan.drain("sewer", -0.4);
    }
    return "sewer";
  }

  /** The sewer, or one that can back up to half a metre above the floor. */
  String sewer(Set<Trait> traits) {
    if (!traits.contains(Trait.SURCHARGED_DRAIN)) {
      return sewer();
    }
    if (drawn.add("low-sewer")) {
      plan.drain(new Drain("low-sewer", "low-sewer", -0.4, OptionalDouble.of(0.5)));
    }
    return "low-sewer";
  }

  Power power(Set<Trait> traits) {
    String circuit = traits.contains(Trait.BACKED_UP) ? "backed-up" : "main";
    if (drawn.add(circuit)) {
      plan.circuit(circuit, traits.contains(Trait.BACKED_UP) ? 3600 : 0);
    }
    return new Power(
        circuit,
        traits.contains(Trait.STAYS_OFF) ? Power.OnReturn.STAYS_OFF : Power.OnReturn.RESTARTS,
        traits.contains(Trait.RESTARTS_LATE) ? 90 : 0);
  }

  /**
   * What a unit stands in: a tray under it, if it has one, or a floor.
   *
   * @param footprint of all that will stand in it (m²)
   */
  String under(String floor, String prefix, double footprint, Set<Trait> traits) {
    boolean drained = traits.contains(Trait.TRAY_DRAIN);
    if (!traits.contains(Trait.TRAY) && !drained) {
      return floor;
    }
    String tray = prefix + floor + "-tray";
    plan.basin(tray, Outline.BOX.of(1.5 * footprint + 0.1, 0.08), floor);
    if (drained) {
      String sewer = sewer(traits);
      Route way = Route.of(0.5, plan.bottomOf(tray) + 0.002, -0.4);
      plan.run(
          tray + "-drain",
          r ->
              way.lay(
                  r.fromLip(tray, 0.002)
                      .toDrain(sewer)
                      .bore(0.04)
                      .duty(Run.Duty.EMERGENCY)
                      .standsIn(PLANT_ROOM)));
    }
    return tray;
  }

  void mayBeToppedUp(String vessel, double volume) {
    topUps.add(new FailureSettings.HandTopUp(vessel, volume));
  }

  Installation draw() {
    return plan.settings(premises.settings(topUps)).draw();
  }
}
