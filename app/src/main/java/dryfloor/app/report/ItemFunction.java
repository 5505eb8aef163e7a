package dryfloor.app.report;

import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.Locale;
import java.util.Optional;

/** What a component is there for, in a few words. */
public final class ItemFunction {

  private final Wording wording;

  /** Functions in this installation. */
  public ItemFunction(Wording wording) {
    this.wording = wording;
  }

  /** The function of the component with this id; of what is no water's business, nothing. */
  public String of(String id) {
    return part(id).or(() -> element(id)).orElse("");
  }

  private Optional<String> part(String id) {
    for (Run run : wording.installation().runs()) {
      for (Part part : run.parts()) {
        if (part.id().equals(id)) {
          return Optional.of(of(part, run));
        }
      }
    }
    return Optional.empty();
  }

  private String of(Part part, Run run) {
    return switch (part) {
      case Part.Pump pump -> "moves water" + fromTo(run);
      case Part.Valve valve ->
          switch (valve.drive()) {
            case Part.Valve.Drive.Hand hand -> "lets a person shut" + in(run);
            case Part.Valve.Drive.Powered powered -> "opens and shuts" + in(run) + " by itself";
          };
      case Part.FloatValve floatValve -> "keeps the level of " + the(floatValve.vessel());
      case Part.CheckValve checkValve -> "keeps water from running back through " + the(run.id());
      case Part.SiphonBreak siphonBreak -> "lets air into " + the(run.id()) + " to stop a siphon";
      case Part.Joint joint -> "holds " + the(run.id()) + " together";
      case Part.Strainer strainer -> "keeps coarse things out of " + the(run.id());
      case Part.Restrictor restrictor -> "limits the flow" + in(run);
      case Part.Device device -> "treats the water" + in(run);
    };
  }

  private Optional<String> element(String id) {
    return wording
        .installation()
        .elements()
        .filter(element -> element.id().equals(id))
        .findFirst()
        .map(this::of);
  }

  private String of(Element element) {
    return switch (element) {
      case Run run -> "carries water" + fromTo(run);
      case Vessel vessel -> vessel.isBasin() ? "catches what spills" : "holds water";
      case Weir weir -> "passes water from " + the(weir.from()) + " to " + the(weir.to());
      case Supply supply -> "gives water";
      case CirculationPump pump -> "stirs the water";
      case Control.LevelSwitch levelSwitch ->
          levelSwitch.action().name().toLowerCase(Locale.ROOT).replace('_', ' ')
              + ", by the level of "
              + the(levelSwitch.vessel());
      case Control.LeakSensor sensor -> "stops pumps when it gets wet";
      case Control.Timer timer -> "stops what runs too long";
      case Control.HandSwitch handSwitch -> "lets a person switch";
      case Circuit circuit -> "feeds electricity";
      case Drain drain -> "takes water out of the building";
      case Floor floor -> "a room";
      case Storey storey -> "a storey";
      case Junction junction -> "joins runs";
    };
  }

  private String fromTo(Run run) {
    return " from " + the(run.from().at()) + " to " + the(run.to().at());
  }

  private String in(Run run) {
    return " in " + the(run.id());
  }

  private String the(String id) {
    return wording.names().the(id);
  }
}
