package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.element.Drain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the water of a floor goes that leaves it for a drain or a vessel. What runs on to other
 * floors or beyond the drawing is told of those.
 */
final class Departures {

  /** Less than this share of what reached the floor changes nothing about how it looks. */
  private static final double SHARE_WORTH_TELLING = 0.1;

  private final Wording wording;
  private final Outcome outcome;

  Departures(Wording wording, Outcome outcome) {
    this.wording = wording;
    this.outcome = outcome;
  }

  /** "33 L of it leave through the gully and 4 L run into the pit"; nothing where little goes. */
  Optional<String> from(Outcome.FloorOutcome floor) {
    Map<String, Double> drains = new LinkedHashMap<>();
    Map<String, Double> vessels = new LinkedHashMap<>();
    for (Ledger.Entry entry : outcome.ledger().entries()) {
      if (entry.from().equals(floor.id()) && isDrain(entry.to())) {
        drains.merge(entry.to(), entry.volume(), Double::sum);
      }
      if (entry.from().equals(floor.id()) && isVessel(entry.to())) {
        vessels.merge(entry.to(), entry.volume(), Double::sum);
      }
    }
    List<String> words = new ArrayList<>();
    goes(floor, drains, "leave", " through ", "drains").ifPresent(words::add);
    goes(floor, vessels, "run", " into ", "vessels").ifPresent(words::add);
    return words.isEmpty() ? Optional.empty() : Optional.of(Sentences.enumerate(words));
  }

  private Optional<String> goes(
      Outcome.FloorOutcome floor,
      Map<String, Double> places,
      String verb,
      String way,
      String several) {
    double all = places.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!wording.amounts().isWorthTelling(all) || all < SHARE_WORTH_TELLING * floor.received()) {
      return Optional.empty();
    }
    String where =
        places.entrySet().stream()
            .filter(place -> place.getValue() > (1 - SHARE_WORTH_TELLING) * all)
            .findFirst()
            .map(place -> wording.names().the(place.getKey()))
            .orElse(several);
    String volume = wording.amounts().volume(all);
    return Optional.of(
        volume.equals(wording.amounts().volume(floor.received()))
            ? "all of it " + verb + "s" + way + where
            : volume + " of it " + verb + way + where);
  }

  private boolean isDrain(String id) {
    return wording.installation().drains().stream().map(Drain::id).anyMatch(id::equals);
  }

  private boolean isVessel(String id) {
    return wording.installation().vessels().stream().anyMatch(vessel -> vessel.id().equals(id));
  }
}
