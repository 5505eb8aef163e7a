package dryfloor.app.command;

/**
 * What every command works with.
 *
 * @param reader of drawings
 * @param analyst who answers
 * @param surface for output
 */
public record Workplace(DrawingReader reader, Analyst analyst, Surface surface) {

  Drawings drawings() {
    return new Drawings(reader);
  }
}
