package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
        List<Vessel> ends =
            Stream.of(weir.from(), weir.to())
                .map(drawing::vessel)
                .flatMap(Optional::stream)
                .toList();
        ends.stream()
            .min(Comparator.comparingDouble(Vessel::rim))
            .ifPresent(vessel -> checkRim(weir, vessel));
        ends.stream()
            .max(Comparator.comparingDouble(Vessel::bottom))
            .ifPresent(vessel -> checkBottom(weir, vessel));
        checkLength(weir, ends);
      }
    }
  }

  /** A weir runs along a wall of one of its two vessels. */
  private void checkLength(Weir weir, List<Vessel> ends) {
    double longest =
        ends.stream().mapToDouble(vessel -> vessel.shape().rimLength()).max().orElse(Double.NaN);
    if (exceeds(weir.length(), longest)) {
      findings.error(
          weir.id(),
          "length",
          "the weir is longer than the rims of '" + weir.from() + "' and '" + weir.to() + "'",
          "at most " + length(longest) + ", once round the larger one");
    }
  }

  private void checkRim(Weir weir, Vessel lower) {
    if (exceeds(weir.crest(), lower.rim())) {
      findings.error(
          weir.id(),
          "crest",
          "the crest lies "
              + length(weir.crest() - lower.rim())
              + " above the rim of '"
              + lower.id()
              + "', which would spill first",
          "a crest below both rims");
    }
  }

  private void checkBottom(Weir weir, Vessel higher) {
    if (exceeds(higher.bottom(), weir.crest())) {
      findings.error(
          weir.id(),
          "crest",
          "the crest lies "
              + length(higher.bottom() - weir.crest())
              + " below the bottom of '"
              + higher.id()
              + "'",
          "a crest above both bottoms");
    }
  }
}
