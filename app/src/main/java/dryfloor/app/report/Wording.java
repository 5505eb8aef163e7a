package dryfloor.app.report;

import dryfloor.model.Installation;
import dryfloor.model.unit.Units;

/**
 * What every sentence about an installation needs.
 *
 * @param installation that is told about
 * @param names of its parts
 * @param amounts in the reader's units
 */
public record Wording(Installation installation, Names names, Amounts amounts) {

  /** Words for an installation in these units. */
  public static Wording of(Installation installation, Units units) {
    return new Wording(installation, Names.of(installation), new Amounts(units));
  }
}
