package dryfloor.model.file;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What an id can stand for. */
enum Referent {
  STOREY("a storey"),
  FLOOR("a floor"),
  VESSEL("a vessel"),
  WEIR("a weir"),
  JUNCTION("a junction"),
  SUPPLY("a supply"),
  DRAIN("a drain"),
  RUN("a run"),
  CIRCULATION_PUMP("a circulation pump"),
  CIRCUIT("a circuit"),
  CONTROL("a control"),
  PUMP("a pump"),
  VALVE("a valve"),
  OTHER_PART("a part of a run");

  private final String description;

  Referent(String description) {
    this.description = description;
  }

  String description() {
    return description;
  }

  static String oneOf(Referent... referents) {
    return Arrays.stream(referents).map(Referent::description).collect(Collectors.joining(" or "));
  }
}
