package dryfloor.analysis.outcome;

import java.util.OptionalDouble;

/**
 * One event of the story, as data.
 *
 * @param time seconds after the failure
 * @param what happened
 * @param subject id of the component it happened to
 * @param other id of a second component that matters (where the water goes, what acted); empty
 *     where there is none
 * @param volume of water that belongs to the event (m³), where there is one
 */
public record StoryEvent(
    double time, What what, String subject, String other, OptionalDouble volume) {

  /** What can happen. Subject and other are named for each. */
  public enum What {
    /** Subject: circuit. */
    POWER_LOST,
    /** Subject: circuit. */
    POWER_BACK,
    /**
     * Subject: pump or powered part; other: the control that stopped it, or empty for lost power.
     */
    STOPS,
    /** Subject: pump or powered part; other: the control that called for it, or empty. */
    STARTS,
    /** Subject: valve that opens. */
    OPENS,
    /** Subject: valve that closes. */
    CLOSES,
    /** Subject: control that acts; other: the place it feels, or empty. */
    ACTS,
    /** Subject: control that lets go; other: the place it feels, or empty. */
    LETS_GO,
    /**
     * Subject: run that now carries water from its second end to its first; other: place that takes
     * it.
     */
    RUNS_BACKWARDS,
    /**
     * Subject: run in which air breaks the water because an opening is uncovered; other: that
     * place.
     */
    TAKES_AIR_AT_OPENING,
    /** Subject: siphon break that lets air in; other: its run. */
    SIPHON_BREAKS,
    /** Subject: run whose column parts at the crest because no siphon can lift that high. */
    COLUMN_PARTS,
    /** Subject: run whose standing water falls; other: place that gets it; volume: how much. */
    RUN_EMPTIES,
    /** Subject: run that fills and carries water over its crest again. */
    RUN_PRIMES,
    /** Subject: pump that sucks air; other: the vessel. */
    SUCKS_AIR,
    /** Subject: pump that lost its prime and stays so; other: the vessel. */
    LOSES_PRIME,
    /**
     * Subject: run through which water still comes after the pump or supply that drove it has
     * stopped; other: place that gets it; volume: from then until it ceased, but for what stood in
     * the run itself.
     */
    RUNS_OUT,
    /**
     * Subject: run or weir that begins to carry water for the first time; other: place that gets
     * it.
     */
    BEGINS_TO_FLOW,
    /**
     * Subject: vessel whose rim is reached; other: where it spills; volume: all that went that way.
     */
    SPILLS,
    /**
     * Subject: vessel whose rim is reached by the water around it; other: the basin or floor on
     * which that stands; volume: all that went over the rim into the vessel.
     */
    FLOODED,
    /**
     * Subject: vessel that stops spilling; other: where it spilled; volume: all that went that way.
     */
    STOPS_SPILLING,
    /** Subject: vessel or run that leaks; other: where it lands; volume: all that went that way. */
    LEAKS,
    /** Subject: vessel that burst; other: where its water went; volume: how much. */
    BURSTS,
    /** Subject: basin that catches its first water. */
    CATCHES,
    /** Subject: floor that gets its first water. */
    FLOOR_WET,
    /** Subject: floor whose sill is reached; other: where it spills on. */
    SILL_REACHED,
    /** Subject: vessel that has run empty. */
    EMPTY,
    /** Subject: vessel that got water by hand; volume: how much. */
    POURED,
    /**
     * Subject: vessel from which water was taken by hand, as much as was meant; volume: how much.
     */
    TAKEN,
    /**
     * Subject: vessel from which less water could be taken by hand than was meant; volume: how much
     * was.
     */
    TAKEN_IN_PART,
    /** Subject: id of the failure of a sequence that begins. */
    FAILS,
    /** Subject: id of the failure of a sequence that is over: mended, or undone. */
    PUT_RIGHT
  }
}
