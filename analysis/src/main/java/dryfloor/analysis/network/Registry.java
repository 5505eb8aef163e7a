package dryfloor.analysis.network;

import dryfloor.analysis.outcome.Ledger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Collects what the compilers find, and gives each thing its index. */
final class Registry {

  final List<Place> places = new ArrayList<>();
  final List<Account> accounts = new ArrayList<>();
  final List<Path> paths = new ArrayList<>();
  final List<Pipe> pipes = new ArrayList<>();
  final List<Tee> tees = new ArrayList<>();
  final List<PoweredPart> parts = new ArrayList<>();

  private final Map<String, Integer> placeOfElement = new HashMap<>();
  private final Map<String, Integer> teeOfJunction = new HashMap<>();
  private final Map<String, Integer> partOfElement = new HashMap<>();

  /** Adds a place that elements refer to by its id. */
  int addNamed(Place place) {
    placeOfElement.put(place.id(), places.size());
    return add(place);
  }

  int add(Place place) {
    places.add(place);
    return places.size() - 1;
  }

  int place(String id) {
    return known(placeOfElement, id, "place");
  }

  int addTee(Tee tee) {
    tees.add(tee);
    return tees.size() - 1;
  }

  int addNamedTee(Tee tee) {
    teeOfJunction.put(tee.id(), tees.size());
    return addTee(tee);
  }

  int tee(String id) {
    return known(teeOfJunction, id, "junction");
  }

  int addPart(PoweredPart part) {
    partOfElement.put(part.id(), parts.size());
    parts.add(part);
    return parts.size() - 1;
  }

  int part(String id) {
    return known(partOfElement, id, "powered part");
  }

  int addAccount(String path, Ledger.Way way, int from, int to, boolean inside) {
    accounts.add(new Account(path, way, from, to, inside));
    return accounts.size() - 1;
  }

  private static int known(Map<String, Integer> indices, String id, String what) {
    Integer index = indices.get(id);
    if (index == null) {
      throw new IllegalArgumentException(
          "no " + what + " is called '" + id + "'; check the drawing before it is compiled");
    }
    return index;
  }
}
