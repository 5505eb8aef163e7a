package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;

/** Checks that weirs lie between two vessels, below both rims and above both bottoms. */
final class WeirCheck {

  private final Drawing drawing;
  private final Findings findings;

  WeirCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    for (Weir weir : drawing.installation().weirs()) {
      if (weir.from().equals(weir.to())) {
        findings.error(
            weir.id(),
            "to",
            "the weir leads from '" + weir.from() + "' to itself",
            "a weir lies between two vessels");
      } else {
        drawing.vessel(weir.from()).ifPresent(vessel -> check(weir, vessel));
        drawing.vessel(weir.to()).ifPresent(vessel -> check(weir, vessel));
      }
    }
  }

  private void check(Weir weir, Vessel vessel) {
    if (exceeds(weir.crest(), vessel.rim())) {
      findings.error(
          weir.id(),
          "crest",
          "the crest lies "
              + length(weir.crest() - vessel.rim())
              + " above the rim of '"
              + vessel.id()
              + "', which would spill first",
          "a crest below both rims");
    }
    if (exceeds(vessel.bottom(), weir.crest())) {
      findings.error(
          weir.id(),
          "crest",
          "the crest lies "
              + length(vessel.bottom() - weir.crest())
              + " below the bottom of '"
              + vessel.id()
              + "'",
          "a crest above both bottoms");
    }
  }
}
