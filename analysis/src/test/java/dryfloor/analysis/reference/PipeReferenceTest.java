package dryfloor.analysis.reference;

@Laws({Law.PIPES, Law.FITTINGS, Law.VALVES})
final class PipeReferenceTest extends ReferenceTest {}
