package dryfloor.analysis.installation;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** All that answers say, to the last bit; what the file sorts, sorted by id. */
public final class Fingerprint {

  private Fingerprint() {}

  /** Of every failure. */
  public static List<String> of(SweepResult result) {
    return result.results().stream().map(Fingerprint::of).toList();
  }

  /** Of one failure. */
  public static String of(FailureResult result) {
    String name = FailureNames.id(result.failure()) + ": ";
    return switch (result) {
      case FailureResult.Answered answered -> name + of(answered.outcome());
      case FailureResult.Unanswered unanswered -> name + unanswered.reason();
      case FailureResult.Skipped skipped -> name + skipped.reason();
    };
  }

  /** Of one course. */
  public static String of(Outcome outcome) {
    List<Object> all = new ArrayList<>();
    all.add(outcome.verdict());
    all.add(outcome.ending());
    all.add(outcome.margin());
    outcome.vessels().stream()
        .sorted(Comparator.comparing(Outcome.VesselOutcome::id))
        .forEach(all::add);
    outcome.floors().stream()
        .sorted(Comparator.comparing(Outcome.FloorOutcome::id))
        .forEach(all::add);
    Stream.concat(outcome.drained().stream(), outcome.supplied().stream())
        .sorted(Comparator.comparing(Outcome.Passed::id))
        .forEach(all::add);
    all.add(outcome.beyond());
    all.add(outcome.firstSpill());
    all.add(outcome.firstWetFloor());
    all.add(outcome.ledger());
    all.add(outcome.story());
    for (int moment = 0; moment < outcome.trajectory().moments(); moment++) {
      all.add(outcome.trajectory().time(moment));
      for (String place : outcome.trajectory().places()) {
        all.add(outcome.trajectory().level(moment, place));
      }
    }
    return all.toString();
  }
}
