package dryfloor.model.fuzz;

import dryfloor.model.fuzz.Tree.Branch;
import dryfloor.model.fuzz.Tree.Entry;
import dryfloor.model.fuzz.Tree.Leaf;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** Every entry of a tree, and chance. */
record Slots(List<Slot> all, RandomGenerator random) {

  private static final int TRIES = 30;

  static Slots of(Branch root, RandomGenerator random) {
    List<Slot> all = new ArrayList<>();
    collect(root, all);
    return new Slots(all, random);
  }

  private static void collect(Branch branch, List<Slot> all) {
    for (int i = 0; i < branch.entries().size(); i++) {
      all.add(new Slot(branch, i));
      if (branch.entries().get(i).value() instanceof Branch inner) {
        collect(inner, all);
      }
    }
  }

  Slot any() {
    return Dictionary.any(all, random);
  }

  Slot anyId() {
    return likely(entry -> entry.name().equals("id"));
  }

  Slot anyText() {
    return likely(entry -> entry.value() instanceof Leaf leaf && leaf.isText());
  }

  /** A text that begins with a digit, or a number. */
  Slot anyQuantity() {
    return likely(
        entry -> entry.value() instanceof Leaf leaf && leaf.written().matches("(?s)\"?-?[0-9].*"));
  }

  /** An entry like this if one is soon found, any other if not. */
  private Slot likely(Predicate<Entry> wanted) {
    for (int i = 0; i < TRIES; i++) {
      Slot slot = any();
      if (wanted.test(slot.entry())) {
        return slot;
      }
    }
    return any();
  }

  /** A branch around the value of an entry. */
  static Branch around(Entry entry, boolean named) {
    List<Entry> only = new ArrayList<>();
    only.add(new Entry(named ? "box" : "", entry.value()));
    return new Branch(named, only);
  }
}
