package dryfloor.app.view.file;

import dryfloor.model.unit.Units;

/**
 * How the program looked when it was used last.
 *
 * @param dark whether letters were light on dark ground
 * @param letters size of the letters (points)
 */
public record Appearance(boolean dark, Units units, double letters) {}
