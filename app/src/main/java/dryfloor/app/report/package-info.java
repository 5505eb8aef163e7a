/**
 * Answers in words, tables and JSON: {@link dryfloor.app.report.CheckReport} tells all failures of
 * a drawing, {@link dryfloor.app.report.TellReport} one of them in full, {@link
 * dryfloor.app.report.JsonAnswer} all of it for other programs. Words only: no number is worked out
 * here that the analysis does not give, but for differences and changes of unit.
 *
 * <h2>The JSON answer, format 1</h2>
 *
 * <pre>
 * dryfloorAnswer     1; a higher number means that a field was taken away or means something else
 * kind               "check", "tell", "pairs", "limits", "away", "bands" or "warnings"
 * statement          what the answer is and is not
 * drawings[]         one for each file, in the order asked for
 *   file             as it was given
 *   noAnswer         why there is none for the whole drawing, which may be sound (too large for the
 *                    memory); then nothing else
 *   problems[]       why there is no answer: line and column (from 1; 0 for the file as a whole), path,
 *                    message, remedy; then nothing else
 *   installation     its name
 *   away_s           unattended time
 *   tolerancesLeftOut   how many quantities carry a tolerance, where the values as drawn are answered;
 *                    left out where none does
 *   normal           an outcome: normal operation
 *   totals           wet, caught, dry, noAnswer, skipped: how many failures
 *   failures[]       worst first (for "tell" the one asked for)
 *     id, name
 *     answer         "WET", "CAUGHT", "DRY", "NO_ANSWER" or "SKIPPED"
 *     hidden         whether it shows nothing until something else happens
 *     reason         for NO_ANSWER and SKIPPED
 *     sentence       the verdict in words
 *     outcome        for the other three
 *   cautions[]       topic, text, source
 *
 * for "pairs", in place of normal, totals and failures
 *   scope            "HIDDEN_WITH_POWER", "HIDDEN_WITH_ANY_EVENT" or "EVERY_TWO"
 *   failures[]       each alone: id, name, answer, hidden
 *   wetTogether[]    worst first: first, second (ids), reachedFloors_L, firstWetFloor_s, floors[]
 *                    (ids), ending
 *   protections[]    failure (id), aloneKeepsDry[] (ids)
 *   noAnswer[]       first, second, reason
 *   matrix           rows[], columns[] (ids), cells[][]: "WET_TOGETHER", "CAUGHT", "DRY",
 *                    "WET_ALONE", "EXCLUDED", "NO_ANSWER", or "" where nothing was put together
 *
 * for "limits"
 *   limits[]         id, name, of (id of the element), today, kind "FOUND", "HELD_BY_OTHERS" or
 *                    "CANCELLED"; values end in _mm (heights above the inside bottom) or _L, or are
 *                    fractions
 *     mark           for running levels: where the water stands running, filled to the top
 *     holds[]        from, to, below, above: each end with kind "FLOOR_WET", "WATER_LOST",
 *                    "SALINITY_OUT", "NO_ANSWER", "NOT_SOUND", "NOT_DRAWABLE", "FILLED_UP_AGAIN",
 *                    "PUMP_IDLE", "EMERGENCY_DRAIN_RUNS" or "NOT_LOOKED_AT", failure (id),
 *                    vessel (id), share, salinity_g_per_kg, reason, settled, pump (id), sucksAir,
 *                    run (id)
 *     mends[]        failure (id) that wets a floor today, ranges[] as in holds
 *     settled        for HELD_BY_OTHERS
 *   remedies[]       what mends a failure that wets a floor today, worst failure first, the least
 *                    change first: failure (id), kind "NUMBER", "AIR_GAP", "SIPHON_BREAK",
 *                    "CUT_OFF" or "STANDPIPE", at (id of what is changed or added to), for NUMBER
 *                    property (id), value and today, for AIR_GAP gap_mm, for the others added (id),
 *                    sentence, costs[] (sentences)
 *
 * for "away"
 *   absences[]       shortest first: time_s, wet (how many failures wet a floor by then), worst (id),
 *                    onFloors_L (left out where every floor is dry)
 *   failures[]       id, name, firstWetFloor_s (left out if dry), onFloors_L[] by the end of each
 *                    absence
 *     guards         left out where nothing acts by itself: acted[] (ids), worth "SAVES",
 *                    "NO_DIFFERENCE" or "MAKES_WORSE", with_L and without_L by the end of the
 *                    longest, firstWetFloorWithout_s; or reason
 *   noAnswer[]       id, name, reason
 *
 * for "bands"
 *   values[]         what matters most first: id, name, quantities (how many are off together), from,
 *                    asDrawn, to (in words), verdictsThatChange, onFloorsChange_L (of all failures),
 *                    marginChange_mm (at most), if it alone goes from end to end
 *   failures[]       worst first: id, name, asDrawn (as answer in "check"), onFloors_L and margin_mm
 *                    (from, to), mattersMost (id of a value; left out if none matters alone)
 *     worst, best    answer, onFloors_L, margin_mm, or reason; at: each value by its id, in words
 *     alone[]        value (id), verdicts, onFloors_L, margin_mm: by how much they differ
 *     inDoubt[]      siphon breaks (ids) of which somewhere the worse of two courses counts
 *     drySamples     at how many samples every floor stays dry, if there are any
 *   notJudged[]      at, drawable (whether it can be built so), reason
 *   points           how many were run
 *   everyCorner      whether every combination of ends was run
 *   samples          number, seed, dry (at how many no failure wets a floor); left out if none asked
 *
 * for "warnings"
 *   warnings[]       rule, text, source
 *
 * outcome
 *   verdict          "WET", "CAUGHT" or "DRY"
 *   ending           kind "AT_REST", "REPEATS", "CONTINUES", "STILL_MOVING", "UP_AND_DOWN"; since_s;
 *                    for REPEATS period_s; for CONTINUES rate_L_per_h; for STILL_MOVING place,
 *                    speed_mm_per_h; for UP_AND_DOWN place, swing_mm, period_s
 *   margin           freeboard_mm, at_s, vessel (left out where no vessel holds water)
 *   firstSpill_s, firstWetFloor_s   left out where it never happens
 *   reachedFloors_L, beyondDrawing_L
 *   vessels[]        id, name, levelBefore_mm, levelAfter_mm (above the vessel's own floor),
 *                    belowRim_mm, highestLevel_mm, highest_s, volumeBefore_L, volumeAfter_L,
 *                    spilled_L, salinityBefore_g_per_kg, salinityAfter_g_per_kg
 *   floors[]         id, name, received_L, standing_L, depth_mm, firstWet_s (left out if dry)
 *   drains[], supplies[]   id, name, volume_L
 *   pumpsRunDry[]    id, name, at_s
 *   ledger[]         path, way, from, to, volume_L, salt_kg
 *   ledgerUntil_s    up to when ledger, salinities, drains and supplies count: the unattended time,
 *                    or for REPEATS as long as it took to see that it does
 *   standing[]       id, before_L, after_L: water in pipes and devices
 *   imbalance_L
 *   story[]          at_s, what, subject, other and volume_L (left out where there is none),
 *                    sentence
 *   notes[]          sentences
 * </pre>
 *
 * <p>The unit stands at the end of the name after an underscore; numbers are always metric,
 * whatever units were asked for; sentences follow the units that were asked for. Ids are those of
 * the drawing, "beyond" and "outside" stand for what is not drawn.
 */
@NullMarked
package dryfloor.app.report;

import org.jspecify.annotations.NullMarked;
