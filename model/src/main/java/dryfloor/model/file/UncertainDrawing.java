package dryfloor.model.file;

import dryfloor.model.Tolerance;
import dryfloor.model.file.UncertainTexts.Uncertain;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What a file says within limits only, and the file read with other values in their places.
 *
 * <p>Reading again is what makes a tolerance possible for every quantity there is: whatever hangs
 * on the value (a rim on a bottom, the course of a run on its ends) follows it, and every check is
 * made again.
 */
public final class UncertainDrawing {

  /** Each doubles what could be looked at; more than that is a drawing that is not known at all. */
  public static final int MOST_VALUES = 64;

  /** Of a list of pairs: which pair, and which of the two. */
  private static final Pattern IN_A_PAIR = Pattern.compile("\\[\\d+]\\[\\d+]$");

  private final Located.Structure root;
  private final Function<Located.Structure, Reading> reader;
  private final List<List<Uncertain>> texts;
  private final List<UncertainValue> values;

  private UncertainDrawing(
      Located.Structure root,
      Function<Located.Structure, Reading> reader,
      List<List<Uncertain>> texts,
      List<UncertainValue> values) {
    this.root = root;
    this.reader = reader;
    this.texts = texts;
    this.values = values;
  }

  /**
   * What is uncertain about a file that was read.
   *
   * @param reader reads another file like it
   */
  static UncertainDrawing of(
      Located.Structure root, Context context, Function<Located.Structure, Reading> reader) {
    Map<String, List<Uncertain>> together = new LinkedHashMap<>();
    for (Uncertain text : context.uncertainTexts().all()) {
      String path = IN_A_PAIR.matcher(text.place().path()).replaceAll("");
      together.computeIfAbsent(path, first -> new ArrayList<>()).add(text);
    }
    List<UncertainValue> values = new ArrayList<>();
    together.forEach((path, texts) -> values.add(value(path, texts, context.ids())));
    return new UncertainDrawing(root, reader, List.copyOf(together.values()), List.copyOf(values));
  }

  private static UncertainValue value(String path, List<Uncertain> texts, DrawnIds ids) {
    Uncertain first = texts.getFirst();
    return new UncertainValue(
        ids.ownerOf(path),
        ids.fieldOf(path),
        first.kind(),
        first.inside(),
        first.spread().around(first.inside()),
        first.height() ? HeightText.measuredFrom(first.text()) : "",
        texts.size());
  }

  /** The tolerances of a drawing, to be kept with it. */
  static List<Tolerance> tolerances(Context context) {
    return context.uncertainTexts().all().stream()
        .map(
            text ->
                new Tolerance(
                    context.ids().ownerOf(text.place().path()),
                    context.ids().fieldOf(text.place().path()),
                    text.spread()))
        .toList();
  }

  /** What is known within limits only, in the order in which it was read. */
  public List<UncertainValue> values() {
    return values;
  }

  /**
   * The file read with other values in the places of those that are uncertain.
   *
   * @param shares one for each of {@link #values}: -1 at its lower end, 0 as drawn, 1 at its upper
   */
  public Reading at(List<Double> shares) {
    Map<String, String> exact = new HashMap<>();
    for (int i = 0; i < texts.size(); i++) {
      double share = shares.get(i);
      texts.get(i).forEach(text -> exact.put(text.place().path(), text.at(share)));
    }
    return reader.apply((Located.Structure) with(exact, root));
  }

  private static Located with(Map<String, String> exact, Located value) {
    return switch (value) {
      case Located.Structure structure ->
          new Located.Structure(
              structure.place(),
              structure.members().stream()
                  .map(m -> new Located.Member(m.place(), m.name(), with(exact, m.value())))
                  .toList());
      case Located.Sequence list ->
          new Located.Sequence(
              list.place(), list.items().stream().map(item -> with(exact, item)).toList());
      case Located.Text text ->
          new Located.Text(text.place(), exact.getOrDefault(text.place().path(), text.text()));
      case Located.Numeral same -> same;
      case Located.Truth same -> same;
      case Located.Nothing same -> same;
    };
  }

  /** Reports what is wrong with a value that by itself is at one of its ends. */
  void checkEnds(Problems problems) {
    if (values.size() > MOST_VALUES) {
      problems.add(
          texts.get(MOST_VALUES).getFirst().place(),
          values.size() + " values with a tolerance",
          "at most " + MOST_VALUES + "; give it to those that matter");
      return;
    }
    texts.forEach(several -> several.forEach(text -> checkMeaning(text, problems)));
    for (int i = 0; i < values.size() && problems.isEmpty(); i++) {
      checkEnd(i, -1, problems);
      checkEnd(i, 1, problems);
    }
  }

  /** What stands for others in the file could not be kept beside each of them. */
  private static void checkMeaning(Uncertain text, Problems problems) {
    String path = text.place().path();
    if (path.equals("water.salinity")) {
      problems.add(
          text.place(),
          "the salinity that all vessels share has no tolerance",
          "write it exactly here, and a salinity such as \"35 g/kg ± 1 g/kg\" in a vessel");
    }
    if (path.contains(".corners[")) {
      problems.add(
          text.place(),
          "a corner of an outline has no tolerance",
          "give the outline by area and rimLength, each with its own");
    }
  }

  private void checkEnd(int value, double end, Problems problems) {
    List<Double> shares = new ArrayList<>(Collections.nCopies(values.size(), 0.0));
    shares.set(value, end);
    if (at(shares) instanceof Reading.Rejected rejected) {
      Uncertain text = texts.get(value).getFirst();
      Problem first = rejected.problems().getFirst();
      problems.add(
          text.place(),
          "'" + text.text() + "' reaches '" + text.at(end) + "', and then: " + first.message(),
          first.remedy());
    }
  }
}
