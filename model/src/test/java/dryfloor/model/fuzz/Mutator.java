package dryfloor.model.fuzz;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** Makes a new file out of those that are there. */
record Mutator(Corpus corpus, RandomGenerator random) {

  private static final List<ByteMutation> ON_BYTES = List.of(ByteMutation.values());
  private static final List<TreeMutation> ON_TREES = List.of(TreeMutation.values());

  /** A file with a few things changed. */
  byte[] next() {
    byte[] file = corpus.any(random);
    return random.nextInt(3) == 0 ? mutateBytes(file) : mutateTree(file);
  }

  private byte[] mutateTree(byte[] file) {
    Optional<Tree.Branch> root = Tree.read(file);
    if (root.isEmpty()) {
      return mutateBytes(file);
    }
    for (boolean more = true; more; more = random.nextBoolean()) {
      Slots slots = Slots.of(root.get(), random);
      if (!slots.all().isEmpty()) {
        Dictionary.any(ON_TREES, random).apply(slots);
      }
    }
    return Tree.write(root.get());
  }

  private byte[] mutateBytes(byte[] file) {
    byte[] mutated = file;
    for (boolean more = true; more && mutated.length > 0; more = random.nextBoolean()) {
      mutated = Dictionary.any(ON_BYTES, random).apply(mutated, corpus.any(random), random);
    }
    return mutated;
  }
}
