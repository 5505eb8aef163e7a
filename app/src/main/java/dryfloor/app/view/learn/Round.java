package dryfloor.app.view.learn;

/**
 * What was earned the last time that a set of exercises was gone through.
 *
 * @param points earned
 * @param done exercises that were answered
 * @param of exercises that the set had
 */
public record Round(int points, int done, int of) {

  /** A course as far as it is done. */
  public static Round of(Course course) {
    return new Round(course.points(), course.marked().size(), course.exercises().size());
  }

  /** Whether every exercise was answered. */
  public boolean isFinished() {
    return done == of;
  }

  /** The most that could be earned in all of its exercises. */
  public int possible() {
    return Course.FULL_MARKS * of;
  }

  /** Whether there can be such a round at all. */
  public boolean isSensible() {
    return of > 0 && done > 0 && done <= of && points >= 0 && points <= Course.FULL_MARKS * done;
  }

  /** Better than another, whose set may have had more or fewer exercises. */
  boolean isBetterThan(Round other) {
    return (long) points * other.possible() > (long) other.points * possible();
  }
}
