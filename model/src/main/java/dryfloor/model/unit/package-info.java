/**
 * Quantities as people write them and as they want to read them: {@link
 * dryfloor.model.unit.QuantityText} reads, {@link dryfloor.model.unit.QuantityFormat} writes. This
 * is the only place where a unit other than SI (with °C and g/kg) may appear as a number.
 */
@NullMarked
package dryfloor.model.unit;

import org.jspecify.annotations.NullMarked;
