package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Pairs in rows and columns: hidden failures against events, or all against all. */
public final class PairMatrix {

  private final List<Failure> rows;
  private final List<Failure> columns;
  private final Map<Set<Failure>, PairAnswer> answers;

  private PairMatrix(
      List<Failure> rows, List<Failure> columns, Map<Set<Failure>, PairAnswer> answers) {
    this.rows = List.copyOf(rows);
    this.columns = List.copyOf(columns);
    this.answers = answers;
  }

  static PairMatrix of(PairResult result) {
    Map<Set<Failure>, PairAnswer> answers = new HashMap<>();
    result.answers().forEach(answer -> answers.put(Set.copyOf(answer.pair().both()), answer));
    List<Failure> rows = new ArrayList<>();
    List<Failure> columns = new ArrayList<>();
    for (Failure failure : result.failures()) {
      boolean hidden = FailureTraits.isHidden(failure, result.alone().installation());
      boolean all = result.scope() == Scope.EVERY_TWO;
      if (all || hidden) {
        rows.add(failure);
      }
      if (all || !hidden) {
        columns.add(failure);
      }
    }
    return new PairMatrix(rows, columns, answers);
  }

  /** Failures in rows, in the order of the list. */
  public List<Failure> rows() {
    return rows;
  }

  /** Failures in columns, in the order of the list. */
  public List<Failure> columns() {
    return columns;
  }

  /** What is known of a row with a column; none on the diagonal of all against all. */
  public Optional<PairAnswer> at(Failure row, Failure column) {
    return row.equals(column)
        ? Optional.empty()
        : Optional.ofNullable(answers.get(Set.of(row, column)));
  }

  /** Only the rows and columns in which some pair newly wets a floor or has no answer. */
  public PairMatrix telling() {
    Set<Failure> telling = new HashSet<>();
    answers.values().stream()
        .filter(answer -> answer.isNewlyWet() || answer instanceof PairAnswer.Unanswered)
        .flatMap(answer -> answer.pair().both().stream())
        .forEach(telling::add);
    return new PairMatrix(kept(rows.stream(), telling), kept(columns.stream(), telling), answers);
  }

  private static List<Failure> kept(Stream<Failure> failures, Set<Failure> telling) {
    return failures.filter(telling::contains).toList();
  }
}
