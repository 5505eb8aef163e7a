/**
 * The installation file: {@link dryfloor.model.file.InstallationFile} reads it, {@link
 * dryfloor.model.file.InstallationWriter} writes it.
 *
 * <p>JSON, UTF-8, strict. Every quantity is a text with its unit ("32 mm", "1 1/4 in", "4 L/min");
 * {@link dryfloor.model.unit.QuantityText} knows them all. Plain numbers and fractions may be JSON
 * numbers ("50 %" is 0.5). {@code scenarios/installation.schema.json} gives completion in an
 * editor; {@link dryfloor.model.file.Form} lists the fields of every object.
 *
 * <h2>Heights</h2>
 *
 * <ul>
 *   <li>A storey gives its elevation above the datum of the building, a floor stands at its
 *       storey's elevation (plus an optional {@code offset}), a vessel's inside bottom is {@code
 *       raised} above the floor or the inside bottom of the vessel named in {@code standsIn}.
 *   <li>What belongs to a vessel or floor is measured from its inside bottom (the floor): {@code
 *       level}, a run end's {@code at}, a weir's {@code crest} (from the bottom of the vessel in
 *       {@code from}), switch levels, {@code closesAt} of a float valve, {@code inlet} of a
 *       circulation pump, {@code at} of a siphon break that is {@code coveredBy} a vessel.
 *   <li>All other heights (waypoints, joints, devices, junctions, supplies, drains, siphon breaks
 *       in the open) are elevations above the datum.
 *   <li>Any height may be written relative to something drawn instead: {@code "80 mm below
 *       display.rim"}, {@code "2.4 m above cellar"}, {@code "3 m above datum"}. The id is a storey,
 *       a floor or a vessel (its inside bottom); {@code .rim} is a vessel's rim.
 * </ul>
 *
 * <h2>Tolerances</h2>
 *
 * <p>Any quantity may say how far it may be off: {@code "120 mm ± 5 mm"} (or {@code +/-}), {@code
 * "40 L/min ± 10 %"}, {@code "8 mm to 12 mm"}, whose middle is then drawn; {@code "80 mm ± 5 mm
 * below display.rim"}. Not a height or temperature by a percentage, not the salinity that vessels
 * share, not the corners of an outline; of a fraction "± 5 %" means points of the hundred. Those in
 * one list of pairs (a curve, the points of a table) are off together. {@link
 * dryfloor.model.file.UncertainDrawing} reads the file with other values in their places.
 *
 * <h2>Fields</h2>
 *
 * <table>
 *   <caption>Every object of the file; what is in (parentheses) may be left out</caption>
 *   <tr><th>object</th><th>fields and defaults</th></tr>
 *   <tr><td>installation</td><td>dryfloor (the version, 1), name, water, storeys, floors, vessels,
 *     (away: 72 h), (weirs, junctions, supplies, drains, runs, circulationPumps, circuits, controls,
 *     failures: none), ($schema)</td></tr>
 *   <tr><td>water</td><td>salinity, (temperature: 25 °C)</td></tr>
 *   <tr><td>storey</td><td>id, (name), elevation, height</td></tr>
 *   <tr><td>floor</td><td>id, (name), storey, (offset: 0 m), area, sill, sillLength, (spillsTo:
 *     beyond the drawing)</td></tr>
 *   <tr><td>vessel</td><td>id, (name), role, shape, standsIn, (raised: 0 mm), level (may be left out
 *     of a basin: dry), (contents: none), (salinity: that of the water), (spillEdge: the whole rim),
 *     (emptyMass)</td></tr>
 *   <tr><td>shape</td><td>one of box {length, width, height}, cylinder {diameter, height}, frustum
 *     {bottomDiameter, rimDiameter, height}, outline {height, and corners or area and rimLength},
 *     table {points of depth and volume, rimLength}</td></tr>
 *   <tr><td>contents</td><td>from, to, volume; depths from the inside bottom</td></tr>
 *   <tr><td>weir</td><td>id, (name), kind, from, to, crest, length</td></tr>
 *   <tr><td>junction</td><td>id, (name), elevation</td></tr>
 *   <tr><td>supply</td><td>id, (name), kind, elevation, protection, (pressure), (maximumFlow; one of
 *     the two must be there), (salinity: 0 g/kg)</td></tr>
 *   <tr><td>drain</td><td>id, (name), elevation, (surchargeLevel)</td></tr>
 *   <tr><td>run</td><td>id, (name), from, to, duty, bore, length, (roughness: 0.0015 mm), (fittings:
 *     none), (extraLoss: 0), (waypoints: none), (parts: none), (vented: false), (standsIn)</td></tr>
 *   <tr><td>run end</td><td>{vessel, at, opening}, {floor, (at: 0 mm), (opening: port)}, {junction},
 *     {supply} or {drain}</td></tr>
 *   <tr><td>waypoint</td><td>elevation, (along)</td></tr>
 *   <tr><td>pump</td><td>part, id, (name), (along), curve of flow and head, power, (speed: 100 %),
 *     (kind: centrifugal), stoppedLoss (of a centrifugal pump), (primesAgain: true), (standsIn)</td></tr>
 *   <tr><td>valve</td><td>part, id, (name), (along), kv, (opening: 100 %), hand or powered</td></tr>
 *   <tr><td>floatValve</td><td>part, id, (name), (along), kv, vessel, closesAt, band</td></tr>
 *   <tr><td>checkValve</td><td>part, id, (name), (along), crackingHead, loss</td></tr>
 *   <tr><td>siphonBreak</td><td>part, id, (name), (along), at, diameter, (count: 1), (coveredBy: the
 *     open air)</td></tr>
 *   <tr><td>joint</td><td>part, id, (name), (along), kind, elevation, (standsIn)</td></tr>
 *   <tr><td>strainer</td><td>part, id, (name), (along), loss</td></tr>
 *   <tr><td>restrictor</td><td>part, id, (name), (along), kv</td></tr>
 *   <tr><td>device</td><td>part, id, (name), (along), kind, elevation, loss, (holds: 0 L),
 *     (cupOverflow), (standsIn)</td></tr>
 *   <tr><td>power</td><td>circuit, (onReturn: restarts), (delay: 0 s); powered valves add rest</td></tr>
 *   <tr><td>circulationPump</td><td>id, (name), vessel, inlet, flow, power</td></tr>
 *   <tr><td>circuit</td><td>id, (name), (backup: 0 s), (breaker: where it is
 *       switched off, in words for the emergency card)</td></tr>
 *   <tr><td>levelSwitch</td><td>control, id, (name), in, lower, upper, action, drives</td></tr>
 *   <tr><td>leakSensor</td><td>control, id, (name), in, depth, (delay: 0 s), drives</td></tr>
 *   <tr><td>timer</td><td>control, id, (name), longestRun, drives</td></tr>
 *   <tr><td>handSwitch</td><td>control, id, (name), on, drives</td></tr>
 *   <tr><td>failures</td><td>(skipped: [{failure, reason}]), (topUps: [{vessel, volume}]),
 *     (sequences: none), (dripArea: 1 mm2), (outage: 30 min), (surge: 1.5)</td></tr>
 *   <tr><td>sequence</td><td>id, (name), events: each of them {at, begins}, {at, ends}, {at, pours,
 *     into, (salinity: 0 g/kg)} or {at, takes, from, (downTo: 0 mm above the bottom)}, where begins
 *     and ends name failures by their ids</td></tr>
 * </table>
 *
 * <p>A name left out is the id with spaces for its dashes. Where {@code along} is left out, see
 * {@link dryfloor.model.file.AlongRule}.
 *
 * <p>What may not live here: any judgement of the drawing (that is {@code dryfloor.model.check})
 * and any unit arithmetic ({@code dryfloor.model.unit}).
 */
@NullMarked
package dryfloor.model.file;

import org.jspecify.annotations.NullMarked;
