package dryfloor.analysis.reference;

@Laws({Law.SIPHONS, Law.AIR})
final class SiphonReferenceTest extends ReferenceTest {}
