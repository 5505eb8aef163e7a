package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.hydraulics.Water;
import dryfloor.model.Installation;
import java.util.List;

/**
 * An installation with its failures built in, ready for the solver.
 *
 * @param installation as drawn
 * @param water that fills it
 * @param places where water can be, inside and outside
 * @param accounts of the ledger
 * @param paths that water takes by itself
 * @param pipes runs, or what is left of them
 * @param tees junctions
 * @param parts that need power
 * @param controls in the order of the drawing
 * @param effects that were built in, for what changes with time
 * @param away unattended time (s)
 */
public record FlowNetwork(
    Installation installation,
    Water water,
    List<Place> places,
    List<Account> accounts,
    List<Path> paths,
    List<Pipe> pipes,
    List<Tee> tees,
    List<PoweredPart> parts,
    List<ControlUnit> controls,
    List<Effect> effects,
    double away) {

  public FlowNetwork {
    places = List.copyOf(places);
    accounts = List.copyOf(accounts);
    paths = List.copyOf(paths);
    pipes = List.copyOf(pipes);
    tees = List.copyOf(tees);
    parts = List.copyOf(parts);
    controls = List.copyOf(controls);
    effects = List.copyOf(effects);
  }

  /** Compiles an installation with these effects built in; none for normal operation. */
  public static FlowNetwork of(Installation installation, List<Effect> effects) {
    return new NetworkCompiler(installation, effects).compile();
  }

  /** The same with more places and accounts. */
  FlowNetwork with(List<Place> morePlaces, List<Account> moreAccounts) {
    return new FlowNetwork(
        installation,
        water,
        morePlaces,
        moreAccounts,
        paths,
        pipes,
        tees,
        parts,
        controls,
        effects,
        away);
  }
}
