package dryfloor.model.element;

/** Anything in the drawing that has an id and a name that a stranger understands. */
public sealed interface Element
    permits Storey,
        Floor,
        Vessel,
        Weir,
        Junction,
        Supply,
        Drain,
        Run,
        CirculationPump,
        Circuit,
        Control {

  /** Unique in the whole installation: letters, digits, dashes and dots. */
  String id();

  /** What people call it. */
  String name();
}
