package dryfloor.analysis.reference;

@Laws({Law.FRICTION})
final class FrictionReferenceTest extends ReferenceTest {}
