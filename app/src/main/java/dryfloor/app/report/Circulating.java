package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;

/**
 * Tells water that goes round and round from an amount that moves once: more than there was and
 * came in can't have gone a way but again and again. Its litres say how long somebody was away, so
 * a rate is told instead.
 *
 * @param water that there was, and that came in (m³)
 * @param until when amounts are counted (s)
 */
record Circulating(double water, double until) {

  static Circulating in(Outcome outcome) {
    double vessels =
        outcome.vessels().stream().mapToDouble(Outcome.VesselOutcome::volumeBefore).sum();
    double standing =
        outcome.ledger().standing().stream().mapToDouble(Ledger.Standing::before).sum();
    double supplied = outcome.supplied().stream().mapToDouble(Outcome.Passed::volume).sum();
    double poured =
        outcome.ledger().entries().stream()
            .filter(entry -> entry.from().equals(Ledger.OUTSIDE))
            .mapToDouble(Ledger.Entry::volume)
            .sum();
    return new Circulating(vessels + standing + supplied + poured, outcome.ledger().until());
  }

  boolean goesRound(double volume, double since) {
    return volume > water && since < until;
  }

  /** On average from then on (m³/s). */
  double rate(double volume, double since) {
    return volume / (until - since);
  }
}
