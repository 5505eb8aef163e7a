package dryfloor.analysis.reference;

/** How a number came here. */
enum Seen {
  /** Read in the document, its scan or a reproduction of its text. */
  IN_THE_SOURCE("seen in the source"),
  /** Read in a quotation that names the source. */
  SECOND_HAND("seen second-hand"),
  /** Not seen by anybody who worked on this: to be verified. */
  FROM_MEMORY("from memory");

  private final String words;

  Seen(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
