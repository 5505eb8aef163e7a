package dryfloor.analysis.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Which place, account and pipe of one network is which of the next, where the same drawing goes on
 * with other things built in. What is gone stays in the next network as a place without a way to it
 * and an account that nothing passes any more, so that the books can go on.
 */
public final class Succession {

  private static final int GONE = -1;

  private final FlowNetwork next;
  private final int[] places;
  private final int[] accounts;
  private final int[] pipes;

  private Succession(FlowNetwork next, int[] places, int[] accounts, int[] pipes) {
    this.next = next;
    this.places = places;
    this.accounts = accounts;
    this.pipes = pipes;
  }

  /** From a network to another of the same drawing. */
  public static Succession of(FlowNetwork before, FlowNetwork compiled) {
    List<Place> places = new ArrayList<>(compiled.places());
    int[] placeOf = new int[before.places().size()];
    Map<Object, Integer> knownPlaces = numbered(compiled.places().stream().map(Succession::key));
    List<Object> keys = keys(before.places().stream().map(Succession::key).toList());
    for (int place = 0; place < placeOf.length; place++) {
      Integer same = knownPlaces.get(keys.get(place));
      placeOf[place] = same == null ? places.size() : same;
      if (same == null) {
        places.add(before.places().get(place));
      }
    }
    List<Account> accounts = new ArrayList<>(compiled.accounts());
    int[] accountOf = new int[before.accounts().size()];
    Map<Object, Integer> knownAccounts = numbered(compiled.accounts().stream());
    List<Object> moved = keys(before.accounts().stream().map(a -> moved(a, placeOf)).toList());
    for (int a = 0; a < accountOf.length; a++) {
      Integer same = knownAccounts.get(moved.get(a));
      accountOf[a] = same == null ? accounts.size() : same;
      if (same == null) {
        accounts.add(moved(before.accounts().get(a), placeOf));
      }
    }
    return new Succession(
        compiled.with(places, accounts), placeOf, accountOf, samePipes(before, compiled));
  }

  private record Key(Place.Kind kind, String id) {}

  private static Key key(Place place) {
    return new Key(place.kind(), place.id());
  }

  private static Account moved(Account account, int[] placeOf) {
    return new Account(
        account.path(),
        account.way(),
        placeOf[account.from()],
        placeOf[account.to()],
        account.inside());
  }

  /** Several of one name are told apart by their order. */
  private record Numbered(Object key, int number) {}

  private static List<Object> keys(List<?> named) {
    Map<Object, Integer> counts = new HashMap<>();
    List<Object> keys = new ArrayList<>();
    for (Object key : named) {
      keys.add(new Numbered(key, counts.merge(key, 1, Integer::sum)));
    }
    return keys;
  }

  private static Map<Object, Integer> numbered(Stream<?> named) {
    Map<Object, Integer> indices = new HashMap<>();
    for (Object key : keys(named.toList())) {
      indices.put(key, indices.size());
    }
    return indices;
  }

  /** Runs that are one pipe before and after. */
  private static int[] samePipes(FlowNetwork before, FlowNetwork next) {
    int[] same = new int[before.pipes().size()];
    Arrays.fill(same, GONE);
    for (int i = 0; i < same.length; i++) {
      String run = before.pipes().get(i).run();
      if (pipesOf(before, run).size() == 1 && pipesOf(next, run).size() == 1) {
        same[i] = pipesOf(next, run).getFirst();
      }
    }
    return same;
  }

  private static List<Integer> pipesOf(FlowNetwork network, String run) {
    List<Integer> pipes = new ArrayList<>();
    for (int i = 0; i < network.pipes().size(); i++) {
      if (network.pipes().get(i).run().equals(run)) {
        pipes.add(i);
      }
    }
    return pipes;
  }

  /** The next network, with what is gone. */
  public FlowNetwork network() {
    return next;
  }

  /** Where a place of the network before is in the next one. */
  public int place(int before) {
    return places[before];
  }

  /** Where an account of the network before is in the next one. */
  public int account(int before) {
    return accounts[before];
  }

  /** Hands amounts of places on; what is new has none. */
  public double[] places(double[] before) {
    double[] after = new double[next.places().size()];
    handOn(before, places, after);
    return after;
  }

  /** Hands amounts of places on into a list that has amounts already. */
  public void places(double[] before, double[] after) {
    handOn(before, places, after);
  }

  /** Hands amounts of accounts on into a list that has amounts already. */
  public void accounts(double[] before, double[] after) {
    handOn(before, accounts, after);
  }

  /** Hands amounts of pipes on, as far as they are still the same, into a list that has some. */
  public void pipes(double[] before, double[] after) {
    handOn(before, pipes, after);
  }

  private static void handOn(double[] before, int[] to, double[] after) {
    for (int i = 0; i < before.length; i++) {
      if (to[i] != GONE) {
        after[to[i]] = before[i];
      }
    }
  }

  /** Where a pipe is in the next network, or -1 where it is no longer the same. */
  public int pipe(int before) {
    return pipes[before];
  }
}
