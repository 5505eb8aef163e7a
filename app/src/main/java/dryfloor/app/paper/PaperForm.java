package dryfloor.app.paper;

/** In which form papers are written, named as on the command line. */
public enum PaperForm {
  /** One page for screen, phone and printer. */
  html,
  /** The same on sheets of paper, and the strips of marks. */
  pdf,
  /** The worksheet for any program, and the rehearsal sheet to be filled in. */
  csv,
  /** The worksheet for a spreadsheet program. */
  xlsx,
  /** For other programs. */
  json
}
