package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure.End;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** One thing changed in a drawing. What is added has an id that nobody had before. */
public sealed interface SingleChange {

  /** The least first: numbers by how far they are moved, then what has to be built. */
  Comparator<SingleChange> LEAST_FIRST =
      Comparator.comparingInt(SingleChange::rank)
          .thenComparingDouble(SingleChange::share)
          .thenComparing(SingleChange::at);

  /** The drawing with it. */
  Installation in(Installation drawn);

  /** Id of the element or part that is changed, or on which something is added. */
  String at();

  /** How much that is of all the values that were looked at; 1 for what is added. */
  default double share() {
    return 1;
  }

  /**
   * A number is another one.
   *
   * @param value nearest to today's that does it
   * @param share how much that is of all the values that were looked at
   */
  record Moved(Property property, Scale scale, double value, double share) implements SingleChange {

    static Moved of(Property property, Scale scale, double value) {
      double span = scale.value(scale.most()) - scale.value(scale.least());
      return new Moved(property, scale, value, Math.abs(value - scale.today()) / span);
    }

    @Override
    public Installation in(Installation drawn) {
      return new Choices(drawn).with(property, value);
    }

    @Override
    public String at() {
      return property.of();
    }
  }

  /**
   * A run ends above the rim of its vessel, so that no water can go back.
   *
   * @param end which end of the run
   * @param vessel id of the vessel
   * @param elevation of the end (m)
   * @param gap of air between it and the rim (m)
   */
  record AirGapMade(String run, End end, String vessel, double elevation, double gap)
      implements SingleChange {

    @Override
    public Installation in(Installation drawn) {
      Installation moved = MovedEnd.of(drawn, run, end, elevation);
      RunEnd.Opening free = new RunEnd.Opening(vessel, elevation, RunEnd.Opening.Kind.FREE);
      return Redrawn.run(
          moved,
          run,
          r ->
              switch (end) {
                case FIRST -> r.withEnds(free, r.to());
                case SECOND -> r.withEnds(r.from(), free);
              });
    }

    @Override
    public String at() {
      return run;
    }
  }

  /** A run has a siphon break more. */
  record SiphonBreakAdded(String run, Part.SiphonBreak hole) implements SingleChange {

    @Override
    public Installation in(Installation drawn) {
      return Redrawn.run(drawn, run, this::drilled);
    }

    private Run drilled(Run whole) {
      List<Part> parts = new ArrayList<>(whole.parts());
      int before = 0;
      while (before < parts.size() && parts.get(before).along() <= hole.along()) {
        before++;
      }
      parts.add(before, hole);
      return whole.withParts(parts);
    }

    @Override
    public String at() {
      return run;
    }
  }

  /** A level switch more, which stops what it drives when the water stands high. */
  record CutOffAdded(Control.LevelSwitch cutOff) implements SingleChange {

    @Override
    public Installation in(Installation drawn) {
      return drawn.withControls(
          Stream.concat(drawn.controls().stream(), Stream.of(cutOff)).toList());
    }

    @Override
    public String at() {
      return cutOff.vessel();
    }
  }

  /** An emergency drain more, from a lip above the running level. */
  record StandpipeAdded(Run drain) implements SingleChange {

    @Override
    public Installation in(Installation drawn) {
      return drawn.withRuns(Stream.concat(drawn.runs().stream(), Stream.of(drain)).toList());
    }

    @Override
    public String at() {
      return drain.from().at();
    }
  }

  private static int rank(SingleChange change) {
    return switch (change) {
      case Moved moved -> 0;
      case AirGapMade gap -> 1;
      case SiphonBreakAdded hole -> 2;
      case CutOffAdded cutOff -> 3;
      case StandpipeAdded standpipe -> 4;
    };
  }
}
