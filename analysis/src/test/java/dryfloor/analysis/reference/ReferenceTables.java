package dryfloor.analysis.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The two tables of outside checks: the values that the laws are held to, and the collected ones
 * that they are not, each with its reason.
 *
 * @param values in the order of the file
 * @param leftOut in the order of the file
 * @param collected how many cases were collected under each heading
 */
record ReferenceTables(
    List<ReferenceValue> values, List<LeftOut> leftOut, Map<String, Integer> collected) {

  private static final ReferenceTables TABLES = read();

  /** The tables as they are in the resources. */
  static ReferenceTables tables() {
    return TABLES;
  }

  List<ReferenceValue> ofLaws(Set<Law> laws) {
    return values.stream().filter(value -> laws.contains(value.question().law())).toList();
  }

  /** An id without its letter: {@code F2-08c} belongs to the case {@code F2-08}. */
  static String caseOf(String id) {
    return id.replaceFirst("[a-z]$", "");
  }

  private static ReferenceTables read() {
    Given file = new Given("values.json", tree());
    file.text("what");
    Given collected = file.object("collected");
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (String heading : collected.names()) {
      counts.put(heading, (int) collected.number(heading));
    }
    Given networks = file.object("networks");
    Map<String, Network> byName =
        networks.names().stream()
            .collect(Collectors.toMap(name -> name, name -> Network.read(networks.object(name))));
    NetworkAnswers.know(byName);
    List<ReferenceValue> values =
        file.objects("values").stream().map(ReferenceTables::value).toList();
    List<LeftOut> leftOut = file.objects("leftOut").stream().map(ReferenceTables::leftOut).toList();
    file.finish();
    return new ReferenceTables(values, leftOut, counts);
  }

  private static JsonNode tree() {
    JsonMapper strict =
        JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    try (InputStream in =
        Objects.requireNonNull(ReferenceTables.class.getResourceAsStream("values.json"))) {
      return strict.readTree(in);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static ReferenceValue value(Given row) {
    ReferenceValue value =
        new ReferenceValue(
            row.text("id"),
            row.oneOf(Question.class, "question"),
            row.text("quantity"),
            row.oneOf(Kind.class, "kind"),
            new ReferenceValue.Source(row.text("work"), optionalText(row, "place")),
            row.oneOf(Seen.class, "seen"),
            optionalText(row, "seenIn"),
            row.object("given"),
            published(row),
            Unit.of(row.text("unit")),
            row.text("toleranceBecause"),
            known(row));
    row.finish();
    return value;
  }

  private static Published published(Given row) {
    if (row.has("least")) {
      return new Published.Range(row.number("least"), row.number("most"));
    }
    double expected = row.number("expected");
    return new Published.Figure(
        expected,
        row.has("tolerance")
            ? row.number("tolerance")
            : Math.abs(expected) * row.number("relativeTolerance"));
  }

  private static Optional<KnownDifference> known(Given row) {
    if (!row.has("knownDifference")) {
      return Optional.empty();
    }
    Given known = row.object("knownDifference");
    KnownDifference difference =
        new KnownDifference(
            known.number("relative"), known.number("within"), known.text("because"));
    known.finish();
    return Optional.of(difference);
  }

  private static Optional<String> optionalText(Given row, String name) {
    return row.has(name) ? Optional.of(row.text(name)) : Optional.empty();
  }

  private static LeftOut leftOut(Given row) {
    LeftOut value =
        new LeftOut(
            row.text("id"),
            row.text("quantity"),
            row.text("source"),
            row.oneOf(Seen.class, "seen"),
            row.oneOf(LeftOut.Reason.class, "reason"),
            row.text("because"));
    row.finish();
    return value;
  }
}
