package dryfloor.analysis.reference;

/** What a row can ask of the laws. A row that asks for anything else can't be read. */
enum Question {
  DENSITY(Law.DENSITY),
  DYNAMIC_VISCOSITY(Law.VISCOSITY),
  VAPOUR_PRESSURE(Law.VAPOUR_PRESSURE),

  FRICTION_FACTOR(Law.FRICTION),
  FRICTION_FACTOR_AT_FLOW(Law.FRICTION),
  HEAD_LOST(Law.PIPES),
  PRESSURE_LOST(Law.PIPES),
  FLOW_UNDER_HEAD(Law.PIPES),
  VELOCITY_UNDER_HEAD(Law.PIPES),
  BORE_FOR_HEAD(Law.PIPES),
  PRESSURE_BELOW_RISER(Law.PIPES),
  FITTING_LOSS(Law.FITTINGS),
  VALVE_LOSS_COEFFICIENT(Law.VALVES),
  KV_OF_CV(Law.VALVES),
  CV_NEEDED(Law.VALVES),

  PUMP_FLOW_AT_SPEED(Law.PUMPS),
  PUMP_HEAD_AT_SPEED(Law.PUMPS),
  THROTTLE_ON_PUMP(Law.PUMPS),
  DUTY_FLOW(Law.PUMPS),
  DUTY_HEAD(Law.PUMPS),
  DUTY_FLOW_SIMULATED(Law.PUMPS),
  DUTY_HEAD_SIMULATED(Law.PUMPS),

  HOLE_FLOW(Law.HOLES),
  HOLE_VELOCITY(Law.HOLES),
  HOLE_COEFFICIENT(Law.HOLES),

  EMPTYING_THROUGH_HOLE(Law.EMPTYING),
  WHOLE_EMPTYING_THROUGH_HOLE(Law.EMPTYING),
  EMPTYING_WITH_INFLOW(Law.EMPTYING),
  EMPTYING_THROUGH_PIPE(Law.EMPTYING),
  EMPTYING_OF_THICK_LIQUID(Law.EMPTYING),
  LEVELLING_THROUGH_HOLE(Law.EMPTYING),
  FALL_WHILE_LEVELLING_THROUGH_PIPES(Law.EMPTYING),

  WEIR_FLOW(Law.WEIRS),
  WEIR_FLOW_WITH_COEFFICIENT(Law.WEIRS),
  DROWNED_SHARE(Law.WEIRS),
  LIP_CONSTANT(Law.LIPS),
  LIP_HAND_OVER(Law.LIPS),
  OPEN_RUN_AREA(Law.PARTLY_FULL),
  OPEN_RUN_FLOW(Law.PARTLY_FULL),
  FILM_FLOW(Law.UPRIGHT_DRAINS),
  SELF_VENTING_FLOW(Law.UPRIGHT_DRAINS),
  FROUDE_NUMBER(Law.UPRIGHT_DRAINS),

  HIGHEST_CREST(Law.SIPHONS),
  CREST_PRESSURE(Law.SIPHONS),
  CREST_PRESSURE_SIMULATED(Law.SIPHONS),
  SIPHON_FLOW(Law.SIPHONS),
  SIPHON_VELOCITY(Law.SIPHONS),
  SIPHON_VELOCITY_SIMULATED(Law.SIPHONS),
  SIPHON_TIME(Law.SIPHONS),
  AIR_CLEARING_VELOCITY(Law.AIR),

  NETWORK_FLOW(Law.NETWORKS),
  NETWORK_VELOCITY(Law.NETWORKS),
  NETWORK_HEAD_LOST(Law.NETWORKS),
  NETWORK_PRESSURE_LOST(Law.NETWORKS),
  JUNCTION_HEAD(Law.NETWORKS),
  JUNCTION_PRESSURE(Law.NETWORKS),
  FLOW_GAINED(Law.NETWORKS),
  FLOW_GAINED_SHARE(Law.NETWORKS);

  private final Law law;

  Question(Law law) {
    this.law = law;
  }

  /** The law that it is put to. */
  Law law() {
    return law;
  }

  /** What that law gives, in SI units. */
  double answer(Given given) {
    return switch (this) {
      case DENSITY -> WaterAnswers.density(given);
      case DYNAMIC_VISCOSITY -> WaterAnswers.dynamicViscosity(given);
      case VAPOUR_PRESSURE -> WaterAnswers.vapourPressure(given);
      case FRICTION_FACTOR -> PipeAnswers.frictionFactor(given);
      case FRICTION_FACTOR_AT_FLOW -> PipeAnswers.frictionFactorAtFlow(given);
      case HEAD_LOST -> PipeAnswers.headLost(given);
      case PRESSURE_LOST -> PipeAnswers.pressureLost(given);
      case FLOW_UNDER_HEAD -> PipeAnswers.flowUnderHead(given);
      case VELOCITY_UNDER_HEAD -> PipeAnswers.velocityUnderHead(given);
      case BORE_FOR_HEAD -> PipeAnswers.boreForHead(given);
      case PRESSURE_BELOW_RISER -> PipeAnswers.pressureBelowRiser(given);
      case FITTING_LOSS -> PipeAnswers.fittingLoss(given);
      case VALVE_LOSS_COEFFICIENT -> PipeAnswers.valveLossCoefficient(given);
      case KV_OF_CV -> PipeAnswers.kvOfCv(given);
      case CV_NEEDED -> PipeAnswers.cvNeeded(given);
      case PUMP_FLOW_AT_SPEED -> PumpAnswers.flowAtSpeed(given);
      case PUMP_HEAD_AT_SPEED -> PumpAnswers.headAtSpeed(given);
      case THROTTLE_ON_PUMP -> PumpAnswers.throttle(given);
      case DUTY_FLOW -> PumpAnswers.dutyFlow(given);
      case DUTY_HEAD -> PumpAnswers.dutyHead(given);
      case DUTY_FLOW_SIMULATED -> PumpAnswers.simulatedDutyFlow(given);
      case DUTY_HEAD_SIMULATED -> PumpAnswers.simulatedDutyHead(given);
      case HOLE_FLOW -> HoleAnswers.flow(given);
      case HOLE_VELOCITY -> HoleAnswers.velocity(given);
      case HOLE_COEFFICIENT -> HoleAnswers.coefficient(given);
      case EMPTYING_THROUGH_HOLE -> EmptyingAnswers.throughHole(given);
      case WHOLE_EMPTYING_THROUGH_HOLE -> EmptyingAnswers.wholeThroughHole(given);
      case EMPTYING_WITH_INFLOW -> EmptyingAnswers.withInflow(given);
      case EMPTYING_THROUGH_PIPE -> EmptyingAnswers.throughPipe(given);
      case EMPTYING_OF_THICK_LIQUID -> EmptyingAnswers.ofThickLiquid(given);
      case LEVELLING_THROUGH_HOLE -> EmptyingAnswers.levellingThroughHole(given);
      case FALL_WHILE_LEVELLING_THROUGH_PIPES -> EmptyingAnswers.fallThroughPipes(given);
      case WEIR_FLOW -> WeirAnswers.flow(given);
      case WEIR_FLOW_WITH_COEFFICIENT -> WeirAnswers.flowWithCoefficient(given);
      case DROWNED_SHARE -> WeirAnswers.drownedShare(given);
      case LIP_CONSTANT -> WeirAnswers.lipConstant(given);
      case LIP_HAND_OVER -> WeirAnswers.lipHandOver(given);
      case OPEN_RUN_AREA -> WeirAnswers.openRunArea(given);
      case OPEN_RUN_FLOW -> WeirAnswers.openRunFlow(given);
      case FILM_FLOW -> WeirAnswers.filmFlow(given);
      case SELF_VENTING_FLOW -> WeirAnswers.selfVentingFlow(given);
      case FROUDE_NUMBER -> WeirAnswers.froudeNumber(given);
      case HIGHEST_CREST -> SiphonAnswers.highestCrest(given);
      case CREST_PRESSURE -> SiphonAnswers.crestPressure(given);
      case CREST_PRESSURE_SIMULATED -> SiphonAnswers.simulatedCrestPressure(given);
      case SIPHON_FLOW -> PipeAnswers.flowUnderHead(given);
      case SIPHON_VELOCITY -> PipeAnswers.velocityUnderHead(given);
      case SIPHON_VELOCITY_SIMULATED -> SiphonAnswers.simulatedVelocity(given);
      case SIPHON_TIME -> SiphonAnswers.timeForVolume(given);
      case AIR_CLEARING_VELOCITY -> SiphonAnswers.airClearingVelocity(given);
      case NETWORK_FLOW -> NetworkAnswers.flow(given);
      case NETWORK_VELOCITY -> NetworkAnswers.velocity(given);
      case NETWORK_HEAD_LOST -> NetworkAnswers.headLost(given);
      case NETWORK_PRESSURE_LOST -> NetworkAnswers.pressureLost(given);
      case JUNCTION_HEAD -> NetworkAnswers.junctionHead(given);
      case JUNCTION_PRESSURE -> NetworkAnswers.junctionPressure(given);
      case FLOW_GAINED -> NetworkAnswers.flowGained(given);
      case FLOW_GAINED_SHARE -> NetworkAnswers.flowGainedShare(given);
    };
  }
}
