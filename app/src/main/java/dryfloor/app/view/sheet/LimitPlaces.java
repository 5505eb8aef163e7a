package dryfloor.app.view.sheet;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.analysis.limit.Property;
import java.util.function.Predicate;

/** Which field of a form a property is filled in with. */
final class LimitPlaces {

  private LimitPlaces() {}

  /** Tells the path of its field from others; a size is told beside the kind of the shape. */
  static Predicate<String> fieldOf(Property property) {
    return switch (property) {
      case Property.RunningLevel p -> "level"::equals;
      case Property.Rim p -> path -> path.startsWith("shape.") && path.endsWith(".height");
      case Property.BasinSize p -> "shape"::equals;
      case Property.ReservoirVolume p -> "shape"::equals;
      case Property.WeirCrest p -> "crest"::equals;
      case Property.StandpipeLip p -> at(p.end())::equals;
      case Property.Port p -> at(p.end())::equals;
      case Property.SiphonBreakHeight p -> "at"::equals;
      case Property.DrainBore p -> "bore"::equals;
      case Property.PumpSpeed p -> "speed"::equals;
      case Property.ValveOpening p -> "opening"::equals;
    };
  }

  private static String at(End end) {
    return switch (end) {
      case FIRST -> "from.at";
      case SECOND -> "to.at";
    };
  }
}
