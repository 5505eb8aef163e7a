package dryfloor.app.paper;

import dryfloor.app.report.Caution;
import java.util.List;
import java.util.Optional;

/**
 * Everything that is handed over about one drawing, in words.
 *
 * @param drawing that it is about
 * @param owner for owner, insurer and building manager, on one page
 * @param worksheet every failure mode
 * @param card for the cabinet door
 * @param marks for the glass
 * @param tolerance that common practice allows for a level on site
 * @param rehearsals failures to rehearse on the real thing, in a safe order
 * @param courses levels over time and ways of the water, for the failures of interest
 * @param doubt how bad and how good it can be where values are not known exactly, if that was
 *     worked out
 * @param cautions that fit this installation
 * @param statement what all this is and is not
 */
public record Report(
    Drawing drawing,
    Owner owner,
    Worksheet worksheet,
    Card card,
    List<Mark> marks,
    String tolerance,
    List<Rehearsal> rehearsals,
    List<Course> courses,
    Optional<Doubt> doubt,
    List<Caution> cautions,
    String statement) {

  public Report {
    marks = List.copyOf(marks);
    rehearsals = List.copyOf(rehearsals);
    courses = List.copyOf(courses);
    cautions = List.copyOf(cautions);
  }

  /** The same with the owner's picture drawn so high (points). */
  Report withPictureSoHigh(double high) {
    return new Report(
        drawing,
        owner.withPictureSoHigh(high),
        worksheet,
        card,
        marks,
        tolerance,
        rehearsals,
        courses,
        doubt,
        cautions,
        statement);
  }

  /**
   * Which drawing was answered, and how.
   *
   * @param name of the installation
   * @param file its name on the disk
   * @param fingerprint of that file
   * @param date on which it was answered
   * @param program name and version
   * @param away time until somebody comes
   */
  public record Drawing(
      String name, String file, String fingerprint, String date, String program, String away) {}

  /**
   * The owner's page.
   *
   * @param installation what there is, in a sentence
   * @param power what a power loss does
   * @param powerPicture before and after; none where the drawing has no power to lose
   * @param worst the worst single failure; none where no floor gets wet
   * @param tally how many failures end how
   * @param better what would make it better
   * @param assumed what the answers rest on
   * @param uncovered what they leave out
   */
  public record Owner(
      String installation,
      Finding power,
      Optional<Picture> powerPicture,
      Optional<Finding> worst,
      String tally,
      List<String> better,
      List<String> assumed,
      List<String> uncovered) {
    public Owner {
      better = List.copyOf(better);
      assumed = List.copyOf(assumed);
      uncovered = List.copyOf(uncovered);
    }

    /** The same with its picture drawn so high (points). */
    Owner withPictureSoHigh(double high) {
      return new Owner(
          installation,
          power,
          powerPicture.map(picture -> picture.soHigh(high)),
          worst,
          tally,
          better,
          assumed,
          uncovered);
    }
  }

  /**
   * What one failure comes to.
   *
   * @param kind of answer, as a word in small letters that style sheets know
   * @param verdict sign and word
   * @param failure its name
   * @param sentence what it means in water
   * @param time there is to react
   */
  public record Finding(
      String kind, String verdict, String failure, String sentence, String time) {}

  /**
   * The failure-mode worksheet.
   *
   * @param scale what the steps of severity mean, the gravest first
   */
  public record Worksheet(List<Step> scale, List<WorksheetRow> rows) {
    public Worksheet {
      scale = List.copyOf(scale);
      rows = List.copyOf(rows);
    }
  }

  /** A step of the scale of severity. */
  public record Step(String number, String meaning) {}

  /**
   * The emergency card.
   *
   * @param breakers that it names; where they are is written in by hand
   */
  public record Card(List<Emergency> cases, List<String> breakers) {
    public Card {
      cases = List.copyOf(cases);
      breakers = List.copyOf(breakers);
    }
  }

  /** What to do when one thing fails. */
  public record Emergency(Finding finding, String seen, List<String> steps) {
    public Emergency {
      steps = List.copyOf(steps);
    }
  }

  /** Marks of a vessel, above its inside bottom and below its rim. */
  public record Mark(
      String vessel, String normal, String highest, String afterPowerLoss, String rim) {}

  /**
   * A failure to rehearse.
   *
   * @param cut what is done to bring it about
   * @param readAfter how long
   * @param levels of what holds water
   * @param dry trays, basins and empty vessels that must stay so
   */
  public record Rehearsal(
      String failure, String cut, String readAfter, List<Expected> levels, List<String> dry) {
    public Rehearsal {
      levels = List.copyOf(levels);
      dry = List.copyOf(dry);
    }
  }

  /** What is expected of a vessel, all of it below its rim. */
  public record Expected(
      String vessel, String before, String expected, String tolerance, String abort) {}

  /** A failure told in full. */
  public record Course(
      Finding finding,
      List<Moment> story,
      List<Level> levels,
      List<Picture> plots,
      Optional<Picture> ways,
      List<Way> movements,
      List<String> notes) {
    public Course {
      story = List.copyOf(story);
      levels = List.copyOf(levels);
      plots = List.copyOf(plots);
      movements = List.copyOf(movements);
      notes = List.copyOf(notes);
    }
  }

  /** A moment of a story. */
  public record Moment(String time, String sentence) {}

  /** The level of a vessel before and after, above its inside bottom. */
  public record Level(
      String vessel, String before, String after, String belowRim, String highest, String change) {}

  /** Water from one place to another. */
  public record Way(String from, String to, String how, String volume) {}

  /**
   * What is not known exactly.
   *
   * @param summary in a sentence
   * @param values what they are, what matters most first
   * @param rows every failure, the worst first
   * @param hanging of failures of which it hangs on the values whether a floor gets wet: where
   * @param reach how far this goes
   */
  public record Doubt(
      String summary,
      List<String> values,
      List<DoubtRow> rows,
      List<String> hanging,
      String reach) {
    public Doubt {
      values = List.copyOf(values);
      rows = List.copyOf(rows);
      hanging = List.copyOf(hanging);
    }
  }

  /** How bad and how good one failure can be. */
  public record DoubtRow(
      String worst, String best, String failure, String onFloors, String margin, String most) {

    public static final List<String> COLUMNS =
        List.of("At worst", "At best", "Failure", "On floors", "Margin", "Matters most");

    /** In the order of the columns. */
    public List<String> cells() {
      return List.of(worst, best, failure, onFloors, margin, most);
    }
  }
}
