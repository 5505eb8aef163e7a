package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The effects to build in, asked by kind. */
record Effects(List<Effect> all) {

  <E extends Effect> Stream<E> every(Class<E> kind) {
    return all.stream().filter(kind::isInstance).map(kind::cast);
  }

  <E extends Effect> Optional<E> first(Class<E> kind, Predicate<E> about) {
    return every(kind).filter(about).findFirst();
  }

  <E extends Effect> boolean has(Class<E> kind, Predicate<E> about) {
    return every(kind).anyMatch(about);
  }
}
