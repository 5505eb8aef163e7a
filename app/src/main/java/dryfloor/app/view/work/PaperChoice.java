package dryfloor.app.view.work;

import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.paper.PaperSize;
import dryfloor.model.unit.Units;

/**
 * How papers are to be made.
 *
 * @param mends for how many failures single changes are looked for that mend them, from 0
 * @param paper sheets they are printed on
 * @param severity how grave how much water is
 */
public record PaperChoice(int mends, PaperSize paper, SeverityScale severity) {

  /** Without mends; where people measure in inches, their sheets are of Letter size. */
  public static PaperChoice usual(Units units) {
    return new PaperChoice(
        0,
        switch (units) {
          case METRIC -> PaperSize.A4;
          case US -> PaperSize.LETTER;
        },
        SeverityScale.USUAL);
  }
}
