package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import java.util.Arrays;

/** No drop and no salt is lost between the beginning of a course and its end. */
final class Balance {

  /** The project's promise: of what is in the system. */
  private static final double PROMISED = 1e-9;

  /** Salinity of fresh water that is not quite fresh (g/kg). */
  private static final double A_TRACE = 1;

  /** A tenth of what the project promises for a level (m). */
  private static final double AS_GOOD_AS_EMPTY = 1e-5;

  /** What the project promises for a volume (m³). */
  private static final double A_MILLILITRE = 1e-6;

  /**
   * A leg that backs up stands as high as the pressure in it, which may be above its crest: so much
   * of its pipe it may seem to hold.
   */
  private static final double BACKED_UP = 1.06;

  private Balance() {}

  static void holds(Course course, String what) {
    double held = held(course);
    double[] before = course.volumesBefore;
    double[] after = course.state().volumes;
    double[] explained = before.clone();
    double[] saltExplained = course.saltBefore.clone();
    for (int a = 0; a < course.network().accounts().size(); a++) {
      Account account = course.network().accounts().get(a);
      double net = course.recorder.carried[0][a] - course.recorder.carried[1][a];
      explained[account.from()] -= net;
      explained[account.to()] += net;
      double salt = course.salt.carried[0][a] - course.salt.carried[1][a];
      saltExplained[account.from()] -= salt;
      saltExplained[account.to()] += salt;
    }
    assertThat(Arrays.stream(after).sum())
        .as("water in all, " + what)
        .isCloseTo(Arrays.stream(before).sum(), within(PROMISED * held));
    for (int place = 0; place < after.length; place++) {
      Place where = course.network().places().get(place);
      assertThat(after[place])
          .as("what came and went explains '" + where.id() + "' (" + where.kind() + "), " + what)
          .isCloseTo(explained[place], within(PROMISED * held));
    }
    double salt = Math.max(Arrays.stream(course.saltBefore).map(Math::abs).sum(), A_TRACE * held);
    for (int place = 0; place < after.length; place++) {
      Place where = course.network().places().get(place);
      assertThat(course.state().salt[place])
          .as("salt that came and went explains '" + where.id() + "', " + what)
          .isCloseTo(saltExplained[place], within(PROMISED * salt));
    }
    assertThat(Arrays.stream(course.state().salt).sum())
        .as("salt in all, " + what)
        .isCloseTo(Arrays.stream(course.saltBefore).sum(), within(PROMISED * salt));
  }

  /** No place gives what it does not have. */
  static void nothingIsOverdrawn(Course course, String what) {
    for (int place = 0; place < course.volumesBefore.length; place++) {
      Place where = course.network().places().get(place);
      if (where.kind().isPool()) {
        double empty = where.table().volume(where.table().bottom() - AS_GOOD_AS_EMPTY);
        assertThat(course.state().volumes[place])
            .as("water left in '" + where.id() + "' (" + where.kind() + "), " + what)
            .isGreaterThanOrEqualTo(Math.min(empty, -A_MILLILITRE));
      }
    }
  }

  /** No leg of a run holds more than fits in it. */
  static void noLegIsOverfull(Course course, String what) {
    for (Pipe pipe : course.network().pipes()) {
      for (Pipe.Leg leg : pipe.legs()) {
        assertThat(course.state().volumes[leg.column()])
            .as("water standing in a leg of '" + pipe.run() + "', " + what)
            .isLessThanOrEqualTo(BACKED_UP * leg.volume() + A_MILLILITRE);
      }
    }
  }

  /** What is in the system, at the beginning or at the end (m³). */
  private static double held(Course course) {
    double before = 0;
    double after = 0;
    for (int place = 0; place < course.volumesBefore.length; place++) {
      boolean pool = course.network().places().get(place).kind().isPool();
      before += pool ? course.volumesBefore[place] : 0;
      after += pool ? course.state().volumes[place] : 0;
    }
    return Math.max(before, after);
  }
}
