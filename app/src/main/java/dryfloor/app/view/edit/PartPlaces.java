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
}
