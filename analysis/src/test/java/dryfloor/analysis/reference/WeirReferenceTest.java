package dryfloor.analysis.reference;

@Laws({Law.WEIRS})
final class WeirReferenceTest extends ReferenceTest {}
