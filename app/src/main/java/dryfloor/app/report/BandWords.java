package dryfloor.app.report;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Figures;
import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Range;
import dryfloor.analysis.band.Swing;
import dryfloor.analysis.band.Weight;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.file.UncertainValue;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** How bad and how good a failure can be, in words that every form of it shares. */
public final class BandWords {

  /** Half a millimetre, which no tape shows (m). */
  private static final double LEAST_MARGIN = 5e-4;

  private final Wording wording;
  private final UncertainWords words;

  /** Words for what was found with these values between their ends. */
  public BandWords(List<UncertainValue> values, Wording wording) {
    this.wording = wording;
    this.words = new UncertainWords(values, wording);
  }

  /** What these figures come to. */
  public static Answer answer(Figures figures) {
    return switch (figures) {
      case Figures.Unknown open -> Answer.NO_ANSWER;
      case Figures.Known known ->
          switch (known.verdict()) {
            case WET -> Answer.WET;
            case CAUGHT -> Answer.CAUGHT;
            case DRY -> Answer.DRY;
          };
    };
  }

  /** How many failures are wet whatever the values, hang on them, and are dry whatever they are. */
  public static String summary(BandResult bands) {
    List<Band> all = bands.bands();
    long always = all.stream().filter(band -> !band.best().figures().isDry()).count();
    long open = all.stream().filter(Band::isOpen).count();
    long dry = all.size() - always - open;
    return count(all.size(), "failure")
        + ", with "
        + count(bands.weights().size(), "value")
        + " known within limits only: "
        + always
        + (always == 1 ? " leaves" : " leave")
        + " a floor wet or without an answer whatever the values, for "
        + open
        + " it hangs on them, "
        + dry
        + (dry == 1 ? " leaves" : " leave")
        + " every floor dry whatever they are. The worst decides.";
  }

  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  public String failure(Band band) {
    return FailureNames.name(band.failure(), wording.installation());
  }

  public String onFloors(Band band) {
    return range(band.onFloors(), wording.amounts()::tabled);
  }

  public String margin(Band band) {
    return range(band.margin(), wording.amounts()::level);
  }

  /** The value that alone changes most; nothing where none changes what anybody could read off. */
  public Optional<String> mattersMost(Band band) {
    return band.most().filter(this::isTold).map(most -> words.name(most.value()));
  }

  /** The value that alone changes most of all failures together, if any does. */
  public Optional<String> mattersMost(BandResult bands) {
    return bands.weights().stream()
        .findFirst()
        .filter(weight -> weight.verdicts() > 0 || weight.onFloors() > 0 || weight.margin() > 0)
        .map(weight -> words.name(weight.value()));
  }

  /** "level of the sump, from 368 mm to 384 mm". */
  public String value(Weight weight) {
    return words.name(weight.value())
        + ", from "
        + words.text(weight.value(), -1)
        + " to "
        + words.text(weight.value(), 1);
  }

  /** A value that changes less than anybody could read off does not matter. */
  private boolean isTold(Swing swing) {
    return swing.verdicts() > 0
        || wording.amounts().isWorthTelling(swing.onFloors())
        || swing.margin() >= LEAST_MARGIN;
  }

  private Set<Integer> told(Band band) {
    return band.swings().stream()
        .filter(this::isTold)
        .map(Swing::value)
        .collect(Collectors.toSet());
  }

  private static String range(Range range, DoubleFunction<String> amount) {
    if (Double.isNaN(range.from())) {
      return "";
    }
    return same(range, amount)
        ? amount.apply(range.from())
        : amount.apply(range.from()) + " to " + amount.apply(range.to());
  }

  private static boolean same(Range range, DoubleFunction<String> amount) {
    return amount.apply(range.from()).equals(amount.apply(range.to()));
  }

  /** Where all values are that are not as drawn. */
  public String where(Point point) {
    return words.where(point);
  }

  /** Of a failure for which it hangs on what is not known: where it is worst, and where best. */
  public String hangsOn(Band band) {
    boolean alone = band.swings().stream().anyMatch(swing -> swing.verdicts() > 0);
    return worst(band)
        + " where "
        + words.where(band.worst().point(), told(band))
        + "; every floor dry where "
        + words.where(band.best().point(), told(band))
        + "; as drawn: "
        + answer(band.drawn()).word()
        + "."
        + (alone ? "" : " No value does that alone.");
  }

  private String worst(Band band) {
    return switch (band.worst().figures()) {
      case Figures.Unknown unknown ->
          "no answer (" + new NoAnswerWords(wording).reason(unknown.reason()) + ")";
      case Figures.Known known -> wording.amounts().volume(known.onFloors()) + " on floors";
    };
  }

  /** At how many points, and whether every combination of ends was among them. */
  public static String reach(BandResult bands) {
    return "Run at "
        + count(bands.points(), "point")
        + ": as drawn, with each value alone at either end, and "
        + (bands.everyCorner()
            ? "at every combination of ends."
            : "then searching among the combinations of ends, from the end that alone was the"
                + " worse (the better) for each value on, one value after another; what changes"
                + " nothing alone stays as drawn. Not every combination was run, so a worse or"
                + " better one may have been missed.");
  }
}
