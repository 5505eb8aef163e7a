package dryfloor.analysis.reference;

@Laws({Law.EMPTYING})
final class EmptyingReferenceTest extends ReferenceTest {}
