package dryfloor.analysis.limit;

import dryfloor.model.Installation;
import dryfloor.model.element.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Emergency standpipes that could be added to a vessel: as wide as the widest drain of the drawing
 * or half as wide again, to a drain, or to a vessel into which others drain.
 */
final class Standpipes {

  /** Bore (m) where nothing drains yet. */
  private static final double USUAL_BORE = 0.04;

  private static final double WIDER = 1.5;

  /** Pipe beside what goes straight down (m). */
  private static final double SIDEWAYS = 1;

  /** Of plastic pipe (m), from any table of pipe roughness. */
  private static final double SMOOTH = 1.5e-6;

  /** Shares of the way from the running level to the rim at which the lip may stand. */
  private static final double USUAL_LIP = 0.5;

  private static final double LOW_LIP = 0.25;

  /** A lip lies so far above the running level (m), or it is no emergency drain. */
  private static final double ABOVE_THE_WATER = 0.003;

  private final Installation drawn;
  private final FreeId ids;

  Standpipes(Installation drawn, FreeId ids) {
    this.drawn = drawn;
    this.ids = ids;
  }

  /**
   * One ladder for each place to which it could lead.
   *
   * @param running level in normal operation (elevation, m)
   */
  List<List<SingleChange>> in(Vessel vessel, double running) {
    return targets(vessel).map(target -> ladder(vessel, running, target)).toList();
  }

  /** Every drain and draining vessel that lies below. */
  private Stream<RunEnd> targets(Vessel vessel) {
    Stream<RunEnd> drains = drawn.drains().stream().map(drain -> new RunEnd.AtDrain(drain.id()));
    Stream<RunEnd> vessels =
        drawn.vessels().stream()
            .filter(other -> !other.isBasin() && isDrainedInto(other))
            .map(other -> new RunEnd.Opening(other.id(), other.rim(), RunEnd.Opening.Kind.FREE));
    return Stream.concat(vessels, drains).filter(end -> drawn.elevationOf(end) < vessel.bottom());
  }

  private boolean isDrainedInto(Vessel vessel) {
    return drawn.runs().stream()
        .anyMatch(run -> run.duty() != Run.Duty.FEED && run.to().at().equals(vessel.id()));
  }

  private List<SingleChange> ladder(Vessel vessel, double running, RunEnd to) {
    double bore =
        drawn.runs().stream()
            .filter(run -> run.duty() != Run.Duty.FEED)
            .mapToDouble(Run::bore)
            .max()
            .orElse(USUAL_BORE);
    double wide = Math.ceil(bore * WIDER * 1000) / 1000;
    double room = vessel.rim() - running;
    return Stream.of(
            rung(vessel, running + USUAL_LIP * room, running, bore, to),
            rung(vessel, running + LOW_LIP * room, running, bore, to),
            rung(vessel, running + LOW_LIP * room, running, wide, to))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<SingleChange> rung(
      Vessel vessel, double height, double running, double bore, RunEnd to) {
    double lip = Additions.wholeMillimetres(vessel, height);
    if (lip < running + ABOVE_THE_WATER) {
      return Optional.empty();
    }
    double length = Math.ceil((lip - drawn.elevationOf(to) + SIDEWAYS) * 10) / 10;
    return Optional.of(
        new SingleChange.StandpipeAdded(
            new Run(
                ids.like("added-standpipe"),
                "Added emergency standpipe",
                new RunEnd.Opening(vessel.id(), lip, RunEnd.Opening.Kind.STANDPIPE),
                to,
                Run.Duty.EMERGENCY,
                bore,
                length,
                SMOOTH,
                List.of(
                    new Run.FittingCount(Fitting.SHARP_ENTRANCE, 1),
                    new Run.FittingCount(Fitting.ELBOW_90, 2),
                    new Run.FittingCount(Fitting.EXIT, 1)),
                0,
                List.of(),
                List.of(),
                true,
                Optional.of(vessel.standsIn()))));
  }
}
