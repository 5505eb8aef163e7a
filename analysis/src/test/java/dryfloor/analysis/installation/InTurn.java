package dryfloor.analysis.installation;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Lets events happen in an installation, one after the other. */
public final class InTurn {

  private static final String ID = "in-turn";

  private final Installation installation;
  private final List<Sequence.Event> events;

  private InTurn(Installation installation, List<Sequence.Event> events) {
    this.installation = installation;
    this.events = events;
  }

  public static InTurn in(Installation installation) {
    return new InTurn(installation, List.of());
  }

  public InTurn begins(double time, String failure) {
    return with(new Sequence.Event.Begins(time, failure));
  }

  public InTurn ends(double time, String failure) {
    return with(new Sequence.Event.Ends(time, failure));
  }

  public InTurn pours(double time, String vessel, double volume) {
    return pours(time, vessel, volume, 0);
  }

  public InTurn pours(double time, String vessel, double volume, double salinity) {
    return with(new Sequence.Event.Pours(time, vessel, volume, salinity));
  }

  public InTurn takes(double time, String vessel, double volume, double downTo) {
    return with(new Sequence.Event.Takes(time, vessel, volume, downTo));
  }

  private InTurn with(Sequence.Event event) {
    return new InTurn(installation, Stream.concat(events.stream(), Stream.of(event)).toList());
  }

  /** The drawing with these events as a sequence. */
  public Installation drawing() {
    FailureSettings usual = installation.failureSettings();
    List<Sequence> sequences = new ArrayList<>(usual.sequences());
    sequences.add(new Sequence(ID, "One after the other", events));
    return installation.withFailureSettings(
        new FailureSettings(
            usual.skipped(),
            usual.topUps(),
            sequences,
            usual.dripArea(),
            usual.outage(),
            usual.surge()));
  }

  /** The failure that these events are in {@link #drawing}. */
  public static Failure failure() {
    return new Failure.SequenceHappens(ID);
  }

  /** Lets all of it happen. */
  public Outcome happen() {
    return Trial.after(drawing(), failure());
  }
}
