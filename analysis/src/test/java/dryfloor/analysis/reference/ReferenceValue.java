package dryfloor.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;

/**
 * A number that somebody else published, with the question to which the laws give theirs.
 *
 * @param id of the row; up to its letter, the case it belongs to
 * @param question what is asked of the laws
 * @param quantity what it is, in words
 * @param kind what the source did to get it
 * @param source work and place in it
 * @param seen how it came here
 * @param seenIn where, if second-hand
 * @param given what the question needs, in SI units
 * @param published what the source says
 * @param unit of that
 * @param toleranceBecause why the tolerance is what it is
 * @param knownDifference where the laws are known to differ by more
 */
record ReferenceValue(
    String id,
    Question question,
    String quantity,
    Kind kind,
    Source source,
    Seen seen,
    Optional<String> seenIn,
    Given given,
    Published published,
    Unit unit,
    String toleranceBecause,
    Optional<KnownDifference> knownDifference) {

  /**
   * Where a number stands.
   *
   * @param work author, title, year
   * @param place example, table or page; empty where the work is one formula
   */
  record Source(String work, Optional<String> place) {

    @Override
    public String toString() {
      return place.map(inside -> work + ", " + inside).orElse(work);
    }
  }

  /** What the laws give, in the unit of the row. */
  double computed() {
    double answer = unit.fromSi(question.answer(given));
    given.finish();
    return answer;
  }

  /** How far the laws are from the source, as a share of what it says. */
  double relativeDifference() {
    return published.relativeDifference(computed());
  }

  /** Asserts that the laws agree with the source, or differ from it just as is known. */
  void holds() {
    double computed = computed();
    String told = this + ": published " + unit.with(published.words()) + ", computed " + computed;
    if (knownDifference.isPresent()) {
      KnownDifference known = knownDifference.get();
      assertThat(published.agreesWith(computed))
          .as(told + "; it agrees, so there is no difference to be known")
          .isFalse();
      assertThat(published.relativeDifference(computed))
          .as(told + "; known to differ: " + known.because())
          .isCloseTo(known.relative(), within(known.within()));
    } else {
      assertThat(published.agreesWith(computed))
          .as(told + "; relative difference " + published.relativeDifference(computed))
          .isTrue();
    }
  }

  /** The case that the row belongs to: its id without the letter. */
  String caseId() {
    return ReferenceTables.caseOf(id);
  }

  @Override
  public String toString() {
    return quantity + " — " + source;
  }
}
