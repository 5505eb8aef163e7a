package dryfloor.analysis.reference;

/** What a source did to get its number. */
enum Kind {
  /** A problem of a textbook or manual with its printed answer. */
  WORKED_EXAMPLE("worked example"),
  MEASUREMENT("measurement"),
  /** A check value of a standard, a code or an international formulation. */
  STANDARD("standard"),
  /** A formula that follows from theory or was published as such, evaluated. */
  CLOSED_FORM("closed form"),
  /** A coefficient that handbooks list. */
  HANDBOOK_VALUE("handbook value");

  private final String words;

  Kind(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
