package dryfloor.model.fuzz;

import dryfloor.model.fuzz.Tree.Branch;
import dryfloor.model.fuzz.Tree.Entry;

/**
 * One entry of a branch, where it can be changed. What is put there is a copy, so that nothing ever
 * comes to hold itself.
 */
record Slot(Branch branch, int index) {

  Entry entry() {
    return branch.entries().get(index);
  }

  void set(Entry entry) {
    branch.entries().set(index, copy(entry));
  }

  void setValue(Tree value) {
    set(new Entry(entry().name(), value));
  }

  void addAfter(Entry entry) {
    branch.entries().add(index + 1, copy(entry));
  }

  private static Entry copy(Entry entry) {
    return new Entry(entry.name(), entry.value().copy());
  }

  void remove() {
    branch.entries().remove(index);
  }
}
