package dryfloor.app.report;

import dryfloor.model.file.VisibleText;

/**
 * How text may look where it is read.
 *
 * @param colour whether it may be coloured
 * @param manyCharacters whether signs beyond ASCII can be shown
 */
public record Ink(boolean colour, boolean manyCharacters) {

  /** Plain text in any characters, as for a file. */
  public static final Ink PLAIN = new Ink(false, true);

  private static final String RESET = "\u001b[0m";

  /** Sign and word of an answer. */
  public String answer(Answer answer) {
    String text = answer.sign(manyCharacters) + " " + answer.word();
    return switch (answer) {
      case WET -> painted("1;31", text);
      case CAUGHT -> painted("33", text);
      case DRY -> painted("32", text);
      case NO_ANSWER -> painted("1;35", text);
      case SKIPPED -> painted("2", text);
    };
  }

  /** A heading. */
  public String heading(String text) {
    return painted("1", text);
  }

  /** Something of less weight. */
  public String faint(String text) {
    return painted("2", text);
  }

  /** Text with marks that would turn it around made visible, and signs beyond ASCII plain. */
  public String fit(String given) {
    String text = VisibleText.withoutTurns(given);
    if (manyCharacters) {
      return text;
    }
    return text.replace("–", "-")
        .replace("—", "-")
        .replace("·", "-")
        .replace("→", "->")
        .replace("²", "2")
        .replace("³", "3")
        .replace("×", "x")
        .replace("±", "+/-")
        .replace("−", "-")
        .replace("°", " deg ")
        .replace("\u00a0", " ")
        .replace("“", "\"")
        .replace("”", "\"");
  }

  private String painted(String code, String text) {
    return colour ? "\u001b[" + code + "m" + text + RESET : text;
  }
}
