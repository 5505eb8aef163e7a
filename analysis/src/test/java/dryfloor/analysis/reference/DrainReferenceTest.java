package dryfloor.analysis.reference;

@Laws({Law.LIPS, Law.PARTLY_FULL, Law.UPRIGHT_DRAINS})
final class DrainReferenceTest extends ReferenceTest {}
