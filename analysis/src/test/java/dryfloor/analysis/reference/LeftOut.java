package dryfloor.analysis.reference;

/**
 * A collected value that no law is held to.
 *
 * @param id of the value; up to its letter, the case it belongs to
 * @param quantity what it is, in words
 * @param source work and place
 * @param seen how it came here
 * @param reason why it is left out
 * @param because the reason, told
 */
record LeftOut(
    String id, String quantity, String source, Seen seen, Reason reason, String because) {

  enum Reason {
    NO_LAW("no law of the program speaks of it"),
    NO_NUMBER("a rule or a definition, without a number to compare"),
    WARNS_AGAINST_ITSELF("its own notes warn against it"),
    SUPERSEDED("a better value of the same thing is in the table");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** The case that the value belongs to: its id without the letter. */
  String caseId() {
    return ReferenceTables.caseOf(id);
  }
}
