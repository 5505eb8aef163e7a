package dryfloor.model.element;

import java.util.Optional;

/**
 * A room's floor up to its sill. Water on it is a wet floor.
 *
 * @param storey id of its storey
 * @param elevation of the floor (m)
 * @param area that water spreads over (m²)
 * @param sill height above the floor at which water leaves the room (m)
 * @param sillLength width of the opening over which it leaves (m)
 * @param spillsTo id of the floor or vessel that water over the sill reaches; none for beyond the
 *     drawing
 */
public record Floor(
    String id,
    String name,
    String storey,
    double elevation,
    double area,
    double sill,
    double sillLength,
    Optional<String> spillsTo)
    implements Element {

  /** Elevation at which water leaves the room (m). */
  public double sillElevation() {
    return elevation + sill;
  }
}
