package dryfloor.app.view.file;

import dryfloor.model.unit.Units;
import java.util.Optional;

/**
 * How the program looked when it was used last.
 *
 * @param dark whether letters were light on dark ground
 * @param letters size of the letters (points)
 * @param still whether water that flows is shown without motion; none where nobody has chosen
 */
public record Appearance(boolean dark, Units units, double letters, Optional<Boolean> still) {}
