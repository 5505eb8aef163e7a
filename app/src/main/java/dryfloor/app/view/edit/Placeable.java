package dryfloor.app.view.edit;

/** Everything that can be put into a drawing by itself; runs come of connecting two places. */
public enum Placeable {
  STOREY,
  FLOOR,
  VESSEL,
  BASIN,
  WEIR,
  SUPPLY,
  DRAIN,
  CIRCUIT,
  CIRCULATION_PUMP,
  PUMP,
  VALVE,
  POWERED_VALVE,
  FLOAT_VALVE,
  CHECK_VALVE,
  SIPHON_BREAK,
  JOINT,
  STRAINER,
  RESTRICTOR,
  DEVICE,
  LEVEL_SWITCH,
  LEAK_SENSOR,
  TIMER,
  HAND_SWITCH
}
