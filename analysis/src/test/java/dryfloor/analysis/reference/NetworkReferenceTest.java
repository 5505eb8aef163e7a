package dryfloor.analysis.reference;

@Laws({Law.NETWORKS})
final class NetworkReferenceTest extends ReferenceTest {}
