package dryfloor.analysis.plain;

/** Where a pipe can end: a place with water, or a tee whose head is found. */
abstract sealed class Node permits Place, Tee {

  final String id;

  Node(String id) {
    this.id = id;
  }

  /** Elevation of the water, or of the head at a full tee (m). */
  abstract double level();
}
