package dryfloor.model.check;

/**
 * Something that a check found in a drawing.
 *
 * @param severity whether it keeps the drawing from being analysed
 * @param element id of the element or part it concerns; empty for the drawing as a whole
 * @param field of that element, as in {@code curve[1]} or {@code from.at}
 * @param message what is wrong
 * @param remedy what would be right
 */
public record Finding(
    Severity severity, String element, String field, String message, String remedy) {

  /** How much a finding matters. */
  public enum Severity {
    /** The drawing can't be built or analysed like this. */
    ERROR,
    /** It may be meant, but should be looked at. */
    WARNING
  }

  public boolean isError() {
    return severity == Severity.ERROR;
  }
}
