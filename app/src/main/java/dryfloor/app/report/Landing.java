package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.model.element.Floor;

/** Where water lands, with the preposition that fits. */
final class Landing {

  private Landing() {}

  /** After a verb of flowing: " into the sump", " onto the cellar floor", " beyond the drawing". */
  static String into(Wording wording, String place) {
    if (place.equals(Ledger.BEYOND)) {
      return " " + wording.names().of(place);
    }
    return (isFloor(wording, place) ? " onto " : " into ") + wording.names().the(place);
  }

  /** Of water that stands: " in the sump", " on the cellar floor". */
  static String on(Wording wording, String place) {
    return (isFloor(wording, place) ? " on " : " in ") + wording.names().the(place);
  }

  static boolean isFloor(Wording wording, String place) {
    return wording.installation().floors().stream().map(Floor::id).anyMatch(place::equals);
  }
}
