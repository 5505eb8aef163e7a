package dryfloor.app.report;

import dryfloor.model.Installation;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The cautions that fit an installation: those about things that it has, and no others. */
public final class Cautions {

  /** What every answer says of itself. */
  public static final String STATEMENT =
      "This is an engineering estimate from the drawing and stated assumptions, to be confirmed by"
          + " a wet test on fresh water. It is no certificate, and it is not complete: pipes that"
          + " burst elsewhere than at a joint or at their lowest point, more failures at once than"
          + " were asked about and people who do the unexpected remain. Local codes and licensed"
          + " trades decide.";

  private static final double SALTY = 1;

  private final Wording wording;
  private final Installation drawing;

  /** Cautions about this installation. */
  public Cautions(Wording wording) {
    this.wording = wording;
    this.drawing = wording.installation();
  }

  /** Those that fit, in a fixed order. */
  public List<Caution> all() {
    List<Caution> cautions = new ArrayList<>();
    electricity().ifPresent(cautions::add);
    drinkingWater().ifPresent(cautions::add);
    floorLoad().ifPresent(cautions::add);
    cautions.add(slips());
    saltWater().ifPresent(cautions::add);
    return cautions;
  }

  private Optional<Caution> electricity() {
    boolean powered =
        !drawing.circulationPumps().isEmpty()
            || drawing.runs().stream().flatMap(run -> run.parts().stream()).anyMatch(this::powered);
    return powered
        ? Optional.of(
            new Caution(
                "Electricity",
                "Powered parts stand in or near water. Residual-current protection on every"
                    + " socket (30 mA or less; class A ground-fault interrupters trip at 4 to 6"
                    + " mA), drip loops, no socket or power strip where spilled water can reach"
                    + " it. Cut power at the breaker with dry hands; never wade to a plug.",
                "IEC 60364-4-41 (30 mA; from memory), NEC Article 100 (class A); common practice"))
        : Optional.empty();
  }

  private boolean powered(Part part) {
    return switch (part) {
      case Part.Pump pump -> true;
      case Part.Valve valve -> valve.drive() instanceof Part.Valve.Drive.Powered;
      case Part.FloatValve floatValve -> false;
      case Part.CheckValve checkValve -> false;
      case Part.SiphonBreak siphonBreak -> false;
      case Part.Joint joint -> false;
      case Part.Strainer strainer -> false;
      case Part.Restrictor restrictor -> false;
      case Part.Device device -> false;
    };
  }

  private Optional<Caution> drinkingWater() {
    List<Supply> bare =
        drawing.supplies().stream()
            .filter(supply -> supply.protection() == Supply.Protection.NONE)
            .toList();
    if (bare.isEmpty()) {
      return Optional.empty();
    }
    String who =
        Sentences.enumerate(bare.stream().map(supply -> wording.names().the(supply.id())).toList());
    String gap =
        switch (wording.amounts().units()) {
          case METRIC -> "at least 20 mm and twice the bore of the inlet";
          case US -> "at least 1 in and twice the opening of the inlet, more near a wall";
        };
    return Optional.of(
        new Caution(
            "Drinking water",
            Sentences.capital(who)
                + (bare.size() > 1 ? " have" : " has")
                + " neither an air gap nor a backflow preventer: tank water can be sucked back"
                + " into it. Fit an approved device, or an air gap of "
                + gap
                + "; a licensed plumber says which is allowed.",
            wording.amounts().units() == Units.METRIC
                ? "EN 1717 type AA; UK Water Supply (Water Fittings) Regulations 1999"
                : "IRC P2902.2.1 (air gaps to ASME A112.1.2)"));
  }

  private Optional<Caution> floorLoad() {
    double lowest = drawing.storeys().stream().mapToDouble(Storey::elevation).min().orElse(0);
    boolean upstairs = drawing.vessels().stream().anyMatch(vessel -> isAbove(vessel, lowest));
    String load =
        switch (wording.amounts().units()) {
          case METRIC -> "10 kg on each square metre for every centimetre of depth";
          case US -> "5.2 lb on each square foot for every inch of depth";
        };
    return upstairs
        ? Optional.of(
            new Caution(
                "Floor load",
                "Vessels stand on an upper storey. Water weighs "
                    + load
                    + ", in a flooded basin or on a wet floor too. A structural engineer"
                    + " approves the floor for all of it.",
                "density of water (1000 kg/m³)"))
        : Optional.empty();
  }

  private boolean isAbove(Vessel vessel, double lowest) {
    return drawing.storeys().stream()
        .filter(storey -> storey.elevation() <= vessel.bottom())
        .mapToDouble(Storey::elevation)
        .max()
        .stream()
        .anyMatch(storey -> storey > lowest);
  }

  private static Caution slips() {
    return new Caution(
        "Slips",
        "Wet floors are slippery. Keep people away while you test, have containment and a"
            + " second person ready, and warn whoever is below.",
        "common practice");
  }

  private Optional<Caution> saltWater() {
    boolean salty = drawing.vessels().stream().anyMatch(vessel -> vessel.salinity() > SALTY);
    boolean drained =
        Stream.concat(
                drawing.runs().stream().map(run -> run.from()),
                drawing.runs().stream().map(run -> run.to()))
            .anyMatch(RunEnd.AtDrain.class::isInstance);
    return salty
        ? Optional.of(
            new Caution(
                "Salt water",
                "Salt or treated water never goes to a storm drain, the ground or a septic"
                    + " system."
                    + (drained
                        ? " Check where the drains drawn here lead, and keep their traps wet."
                        : ""),
                "common practice; local discharge rules decide"))
        : Optional.empty();
  }
}
