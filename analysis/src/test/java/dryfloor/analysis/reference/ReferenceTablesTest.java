package dryfloor.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** No row of the table is lost, doubled or passed over. */
class ReferenceTablesTest {

  private static final ReferenceTables TABLES = ReferenceTables.tables();

  @Test
  void everyLawIsRunByJustOneTest() {
    List<Law> run = new ArrayList<>();
    for (Class<?> test : ReferenceTest.class.getPermittedSubclasses()) {
      Laws laws = Objects.requireNonNull(test.getAnnotation(Laws.class), test.getName());
      run.addAll(Arrays.asList(laws.value()));
    }
    assertThat(run).containsExactlyInAnyOrder(Law.values());
  }

  @Test
  void everyLawAndEveryQuestionHasARow() {
    assertThat(TABLES.values().stream().map(ReferenceValue::question).distinct())
        .containsExactlyInAnyOrder(Question.values());
    assertThat(TABLES.values().stream().map(value -> value.question().law()).distinct())
        .containsExactlyInAnyOrder(Law.values());
  }

  @Test
  void noIdIsInTheTablesTwice() {
    assertThat(ids().toList()).doesNotHaveDuplicates();
  }

  @Test
  void noRowIsToldLikeAnother() {
    assertThat(TABLES.values()).extracting(ReferenceValue::toString).doesNotHaveDuplicates();
  }

  /** Cases are numbered from 1 under each heading, so that a row that went missing shows. */
  @Test
  void bothTablesTogetherHoldEveryCaseThatWasCollected() {
    Map<String, TreeSet<String>> found = new TreeMap<>();
    ids()
        .map(ReferenceTables::caseOf)
        .forEach(id -> found.computeIfAbsent(heading(id), h -> new TreeSet<>()).add(id));
    assertThat(found.keySet()).containsExactlyInAnyOrderElementsOf(TABLES.collected().keySet());
    TABLES
        .collected()
        .forEach(
            (heading, count) ->
                assertThat(found.get(heading))
                    .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, count)
                            .mapToObj(i -> String.format("%s-%02d", heading, i))
                            .toList()));
  }

  /** Letters run on as well. */
  @Test
  void noNumberOfACaseIsMissing() {
    Map<String, StringBuilder> letters = new TreeMap<>();
    ids()
        .sorted()
        .forEach(
            id -> {
              String first = ReferenceTables.caseOf(id);
              letters
                  .computeIfAbsent(first, missing -> new StringBuilder())
                  .append(id.substring(first.length()));
            });
    letters.forEach(
        (id, found) ->
            assertThat("abcdefghijklmnopqrstuvwxyz").as(id).startsWith(found.toString()));
  }

  @Test
  void whatIsSecondHandSaysWhereItWasSeen() {
    assertThat(TABLES.values())
        .allSatisfy(
            value ->
                assertThat(value.seenIn().isPresent())
                    .as(value.toString())
                    .isEqualTo(value.seen() == Seen.SECOND_HAND));
  }

  @Test
  void aRowThatNobodyCanAnswerIsRefused() {
    Given row = given("{\"question\": \"COLOUR_OF_WATER\"}");

    assertThatThrownBy(() -> row.oneOf(Question.class, "question"))
        .hasMessageContaining("'question' is COLOUR_OF_WATER, which is no Question");
  }

  @Test
  void anInputThatNobodyAsksForIsRefused() {
    Given row = given("{\"bore_m\": 0.05, \"colour\": 3}");
    row.number("bore_m");

    assertThatThrownBy(row::finish).hasMessageContaining("nothing uses [colour]");
    assertThatThrownBy(() -> row.number("length_m")).hasMessageContaining("'length_m' is missing");
  }

  private static Given given(String json) {
    return new Given("a row", new JsonMapper().readTree(json));
  }

  private static String heading(String id) {
    return id.substring(0, id.indexOf('-'));
  }

  private static Stream<String> ids() {
    return Stream.concat(
        TABLES.values().stream().map(ReferenceValue::id),
        TABLES.leftOut().stream().map(LeftOut::id));
  }
}
