package dryfloor.app.view.edit;

import dryfloor.model.part.Part;
import java.util.OptionalDouble;

/** Where parts sit in their runs. */
final class PartPlaces {

  private PartPlaces() {}

  /** The height of its own that a part has (m); none for one that is just in the pipe. */
  static OptionalDouble height(Part part) {
    return switch (part) {
      case Part.SiphonBreak siphonBreak -> OptionalDouble.of(siphonBreak.elevation());
      case Part.Joint joint -> OptionalDouble.of(joint.elevation());
      case Part.Device device -> OptionalDouble.of(device.elevation());
      case Part.Pump pump -> OptionalDouble.empty();
      case Part.Valve valve -> OptionalDouble.empty();
      case Part.FloatValve floatValve -> OptionalDouble.empty();
      case Part.CheckValve checkValve -> OptionalDouble.empty();
      case Part.Strainer strainer -> OptionalDouble.empty();
      case Part.Restrictor restrictor -> OptionalDouble.empty();
    };
  }

  /** The same part so far (m) along its run. */
  static Part at(Part part, double along) {
    return switch (part) {
      case Part.Pump p ->
          new Part.Pump(
              p.id(),
              p.name(),
              along,
              p.curve(),
              p.speed(),
              p.kind(),
              p.power(),
              p.stoppedLoss(),
              p.primesAgain(),
              p.standsIn());
      case Part.Valve p -> new Part.Valve(p.id(), p.name(), along, p.kv(), p.opening(), p.drive());
      case Part.FloatValve p ->
          new Part.FloatValve(p.id(), p.name(), along, p.kv(), p.vessel(), p.closesAt(), p.band());
      case Part.CheckValve p ->
          new Part.CheckValve(p.id(), p.name(), along, p.crackingHead(), p.loss());
      case Part.SiphonBreak p ->
          new Part.SiphonBreak(
              p.id(), p.name(), along, p.elevation(), p.diameter(), p.count(), p.coveredBy());
      case Part.Joint p ->
          new Part.Joint(p.id(), p.name(), along, p.elevation(), p.kind(), p.standsIn());
      case Part.Strainer p -> new Part.Strainer(p.id(), p.name(), along, p.loss());
      case Part.Restrictor p -> new Part.Restrictor(p.id(), p.name(), along, p.kv());
      case Part.Device p ->
          new Part.Device(
              p.id(),
              p.name(),
              along,
              p.kind(),
              p.elevation(),
              p.loss(),
              p.holds(),
              p.cupOverflow(),
              p.standsIn());
    };
  }
}
