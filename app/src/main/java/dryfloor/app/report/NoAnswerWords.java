package dryfloor.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is said where the simulation gave up: how far it got and where, as far as its reason tells,
 * and what the reader can do.
 */
public final class NoAnswerWords {

  /** What holds for every failure without an answer. */
  static final String FOR_ALL =
      "Treat these as wet until they have an answer. 'dryfloor tell FILE FAILURE' says how far each"
          + " was followed and what may help.";

  private static final Pattern TIME = Pattern.compile("at ([0-9.]+) s\\b");
  private static final Pattern PLACE = Pattern.compile("'([^']+)'");

  private static final double A_MINUTE = 60;
  private static final double AN_HOUR = 3600;

  /** So much of the time that was reached can be answered for certain. */
  private static final double MOSTLY = 0.9;

  private final Wording wording;

  /** Words about this installation. */
  public NoAnswerWords(Wording wording) {
    this.wording = wording;
  }

  /** The reason with its time as people say it and its places by name. */
  public String reason(String reason) {
    String timed =
        TIME.matcher(reason)
            .replaceAll(
                found -> "after " + Matcher.quoteReplacement(time(seconds(found.group(1)))));
    return PLACE
        .matcher(timed)
        .replaceAll(found -> Matcher.quoteReplacement(wording.names().the(found.group(1))));
  }

  /** The reason, what follows for now, and where to look. */
  public String whole(String reason) {
    List<String> all = advice(reason);
    return Sentences.capital(reason(reason)) + ".\n" + all.getFirst() + "\n" + all.getLast();
  }

  /** What the reader can do. */
  List<String> advice(String reason) {
    List<String> advice = new ArrayList<>();
    advice.add("Treat this failure as wet until it has an answer.");
    reached(reason)
        .filter(time -> time >= A_MINUTE)
        .ifPresent(
            time ->
                advice.add(
                    "To see the levels and the story up to then, ask with a shorter time away: --away "
                        + shorter(time)
                        + "."));
    advice.add(
        "Look at what switches or fills there: two controls that work against each other, levels"
            + " that lie a millimetre apart, a very small vessel beside a very large one.");
    return advice;
  }

  /** A little less, in whole hours or minutes, as it is typed. */
  private static String shorter(double time) {
    double enough = time * MOSTLY;
    return enough >= 2 * AN_HOUR
        ? (long) (enough / AN_HOUR) + "h"
        : Math.max(1, (long) (enough / A_MINUTE)) + "min";
  }

  private static Optional<Double> reached(String reason) {
    Matcher time = TIME.matcher(reason);
    return time.find() ? Optional.of(seconds(time.group(1))) : Optional.empty();
  }

  private static double seconds(String digits) {
    return Double.parseDouble(digits);
  }

  private String time(double seconds) {
    return wording.amounts().time(seconds);
  }
}
