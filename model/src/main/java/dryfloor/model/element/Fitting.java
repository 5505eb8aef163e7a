package dryfloor.model.element;

/** Fittings by the names the trade uses; what each costs in head is known to the analysis. */
public enum Fitting {
  ELBOW_90,
  LONG_BEND_90,
  ELBOW_45,
  RETURN_BEND_180,
  TEE_THROUGH,
  TEE_BRANCH,
  UNION,
  SHARP_ENTRANCE,
  ROUNDED_ENTRANCE,
  PROTRUDING_ENTRANCE,
  EXIT,
  GATE_VALVE_OPEN,
  BALL_VALVE_OPEN,
  BUTTERFLY_VALVE_OPEN,
  FOOT_VALVE
}
