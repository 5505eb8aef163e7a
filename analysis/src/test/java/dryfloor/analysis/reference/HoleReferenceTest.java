package dryfloor.analysis.reference;

@Laws({Law.HOLES})
final class HoleReferenceTest extends ReferenceTest {}
