package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Ledger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Puts the books into a {@link Ledger}. */
final class LedgerBuilder {

  private final Course course;
  private final FlowNetwork network;
  private final Recorder recorder;

  private LedgerBuilder(Course course) {
    this.course = course;
    this.network = course.network();
    this.recorder = course.recorder;
  }

  /** The ledger of a course. */
  static Ledger of(Course course) {
    return new LedgerBuilder(course).build();
  }

  private Ledger build() {
    List<Ledger.Entry> entries = new ArrayList<>();
    for (int a = 0; a < network.accounts().size(); a++) {
      for (int direction = 0; direction < 2; direction++) {
        if (recorder.carried[direction][a] > 0) {
          entries.add(entry(a, direction));
        }
      }
    }
    return new Ledger(entries, standing(), course.countedUntil, imbalance());
  }

  private Ledger.Entry entry(int a, int direction) {
    Account account = network.accounts().get(a);
    int from = direction == 0 ? account.from() : account.to();
    int to = direction == 0 ? account.to() : account.from();
    double saltKilograms = course.salt.carried[direction][a] * network.water().density() / 1000;
    return new Ledger.Entry(
        account.path(),
        account.way(),
        network.places().get(from).id(),
        network.places().get(to).id(),
        recorder.carried[direction][a],
        saltKilograms);
  }

  private List<Ledger.Standing> standing() {
    Map<String, double[]> standing = new TreeMap<>();
    for (int place = 0; place < network.places().size(); place++) {
      Place what = network.places().get(place);
      boolean counts =
          switch (what.kind()) {
            case COLUMN, TEE, DEVICE -> true;
            case VESSEL, BASIN, FLOOR, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
          };
      if (counts) {
        double[] sums = standing.computeIfAbsent(what.id(), id -> new double[2]);
        sums[0] += course.volumesBefore[place];
        sums[1] += course.state().volumes[place];
      }
    }
    return standing.entrySet().stream()
        .map(e -> new Ledger.Standing(e.getKey(), e.getValue()[0], e.getValue()[1]))
        .toList();
  }

  private double imbalance() {
    double sum = 0;
    for (int place = 0; place < network.places().size(); place++) {
      sum += course.state().volumes[place] - course.volumesBefore[place];
    }
    return sum;
  }
}
