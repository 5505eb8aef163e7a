package dryfloor.analysis.reference;

@Laws({Law.PUMPS})
final class PumpReferenceTest extends ReferenceTest {}
