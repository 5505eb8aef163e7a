package dryfloor.analysis.reference;

@Laws({Law.DENSITY, Law.VISCOSITY, Law.VAPOUR_PRESSURE})
final class WaterReferenceTest extends ReferenceTest {}
