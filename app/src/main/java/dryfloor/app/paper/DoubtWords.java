package dryfloor.app.paper;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Figures;
import dryfloor.app.report.Answer;
import dryfloor.app.report.BandWords;
import dryfloor.app.report.NoAnswerWords;
import java.util.Optional;
import java.util.stream.Stream;

/** How bad and how good each failure can be where values are not known exactly. */
final class DoubtWords {

  private final Question question;
  private final BandResult bands;
  private final BandWords words;

  private DoubtWords(Question question, Question.Banded banded) {
    this.question = question;
    this.bands = banded.bands();
    this.words = new BandWords(banded.values(), question.wording());
  }

  static Optional<Report.Doubt> of(Question question) {
    return question.banded().map(banded -> new DoubtWords(question, banded).doubt());
  }

  /** For the owner's page: how many floors hang on it, and on what. */
  static Optional<String> sentence(Question question) {
    return question.banded().map(banded -> new DoubtWords(question, banded).sentence());
  }

  private Report.Doubt doubt() {
    return new Report.Doubt(
        BandWords.summary(bands),
        bands.weights().stream().map(words::value).toList(),
        bands.bands().stream().map(this::row).toList(),
        Stream.concat(
                bands.bands().stream()
                    .filter(Band::isOpen)
                    .map(band -> words.failure(band) + ": " + words.hangsOn(band)),
                notJudged())
            .toList(),
        BandWords.reach(bands) + " Between the ends nothing was run.");
  }

  private Stream<String> notJudged() {
    NoAnswerWords reasons = new NoAnswerWords(question.wording());
    return bands.unsound().stream()
        .map(
            unsound ->
                "Where "
                    + words.where(unsound.point())
                    + " no failure could be judged, which never counts as dry: "
                    + reasons.reason(unsound.reason()));
  }

  private Report.DoubtRow row(Band band) {
    return new Report.DoubtRow(
        answer(band.worst().figures()),
        answer(band.best().figures()),
        words.failure(band),
        words.onFloors(band),
        words.margin(band),
        words.mattersMost(band).orElse("none"));
  }

  private static String answer(Figures figures) {
    Answer answer = BandWords.answer(figures);
    return answer.sign(true) + " " + answer.word();
  }

  private String sentence() {
    long wet = bands.bands().stream().filter(band -> !band.worst().figures().isDry()).count();
    long always = bands.bands().stream().filter(band -> !band.best().figures().isDry()).count();
    return "Not all measures are known exactly: at worst "
        + wet
        + " of the failures wet a floor or have no answer, at best "
        + always
        + words.mattersMost(bands).map(value -> "; what matters most is the " + value).orElse("")
        + (bands.unsound().isEmpty()
            ? ""
            : ". With some of these measures no failure could be judged")
        + ".";
  }
}
