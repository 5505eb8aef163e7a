package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Cause;
import dryfloor.analysis.rehearsal.LikelyCauses;
import dryfloor.analysis.rehearsal.MeasuredLevel;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What was rehearsed and measured, as a sentence for each level and as a record to be kept. */
public final class RehearsalRecord {

  private static final int VERSION = 1;
  private static final double MM = 1000;

  /** So many causes are told. */
  private static final int TOLD = 5;

  private RehearsalRecord() {}

  /**
   * A rehearsed failure.
   *
   * @param levels that were measured
   * @param causes by how well they fit; empty where all is within tolerance
   */
  public record Rehearsed(Failure failure, List<Level> levels, List<Cause.Ranked> causes) {
    public Rehearsed {
      levels = List.copyOf(levels);
      causes = List.copyOf(causes);
    }

    /**
     * Holds what was measured in a rehearsal against what was expected; where that differs, runs
     * the failure again with each likely cause.
     */
    public static Rehearsed of(Installation installation, RehearsalStep step, List<Level> levels) {
      Failure failure = step.result().failure();
      Rehearsed plain = new Rehearsed(failure, levels, List.of());
      if (plain.fits(Rehearsal.TOLERANCE)) {
        return plain;
      }
      List<MeasuredLevel> measured =
          levels.stream().map(level -> elevations(installation, level)).toList();
      return new Rehearsed(failure, levels, LikelyCauses.of(installation, failure, measured));
    }

    private static MeasuredLevel elevations(Installation installation, Level level) {
      double rim =
          installation.vessels().stream()
              .filter(vessel -> vessel.id().equals(level.vessel()))
              .mapToDouble(Vessel::rim)
              .findFirst()
              .orElseThrow();
      return new MeasuredLevel(
          level.vessel(),
          level.before().stream().mapToDouble(before -> rim - before.measured()).findFirst(),
          rim - level.after().measured());
    }

    /** Whether every level is within tolerance. */
    public boolean fits(double tolerance) {
      return levels.stream().allMatch(level -> level.fits(tolerance));
    }
  }

  /**
   * What was measured in a vessel.
   *
   * @param before anything was switched off; none where nobody measured it
   * @param after all was still
   * @param by who measured; may be empty
   */
  public record Level(String vessel, Optional<Depth> before, Depth after, String by) {

    /** What was measured where this was expected; nothing before where that was not measured. */
    public static Level of(
        RehearsalStep.ExpectedLevel expected, OptionalDouble before, double after, String by) {
      double rim = expected.rim();
      return new Level(
          expected.vessel(),
          before.stream()
              .mapToObj(measured -> new Depth(rim - expected.before(), measured))
              .findFirst(),
          new Depth(rim - expected.expected(), after),
          by);
    }

    /** Whether all of it is where it was expected, within a tolerance (m). */
    public boolean fits(double tolerance) {
      return after.fits(tolerance) && before.stream().allMatch(depth -> depth.fits(tolerance));
    }
  }

  /** How deep below the rim water was expected and measured (m). */
  public record Depth(double expected, double measured) {

    /** How much higher the water stands than expected (m). */
    public double higher() {
      return expected - measured;
    }

    /** Whether it is where it was expected, within a tolerance (m). */
    public boolean fits(double tolerance) {
      return Math.abs(higher()) <= tolerance;
    }
  }

  /**
   * What a record is about.
   *
   * @param drawing its file name
   * @param fingerprint of that file
   * @param sheet fingerprint of the drawing for which the sheet was made, where it says so
   * @param date on which it was measured
   * @param program name and version
   */
  public record About(
      String drawing, String fingerprint, Optional<String> sheet, String date, String program) {}

  /** For reading. */
  public static String text(List<Rehearsed> all, double tolerance, Wording wording, Ink ink) {
    Lines lines = new Lines(ink);
    lines.add(ink.heading(wording.installation().name()));
    for (Rehearsed rehearsed : all) {
      lines.heading(FailureNames.name(rehearsed.failure(), wording.installation()));
      rehearsed
          .levels()
          .forEach(
              level -> {
                level
                    .before()
                    .ifPresent(
                        before ->
                            lines.paragraph(
                                "  ",
                                "    ",
                                sentence(level, " before", before, tolerance, wording)));
                lines.paragraph(
                    "  ", "    ", sentence(level, "", level.after(), tolerance, wording));
              });
      causes(rehearsed, wording, lines);
    }
    lines.blank();
    lines.paragraph("", Cautions.STATEMENT);
    return lines.text();
  }

  private static String sentence(
      Level level, String when, Depth depth, double tolerance, Wording wording) {
    return (depth.fits(tolerance) ? "fits   " : "DIFFERS  ")
        + wording.names().label(level.vessel())
        + when
        + ": "
        + wording.amounts().level(depth.measured())
        + " below the rim, expected "
        + wording.amounts().level(depth.expected())
        + " ("
        + wording.amounts().levelChange(depth.higher())
        + " in level)";
  }

  private static void causes(Rehearsed rehearsed, Wording wording, Lines lines) {
    if (rehearsed.causes().isEmpty()) {
      return;
    }
    CauseWords words = new CauseWords(wording);
    Cause.Misfit drawn = drawn(rehearsed);
    lines.paragraph("  ", "As drawn, " + left(drawn, wording) + ".");
    List<Cause.Ranked> better =
        rehearsed.causes().stream()
            .filter(ranked -> !(ranked.cause() instanceof Cause.AsDrawn))
            .filter(ranked -> average(ranked) < drawn.average())
            .limit(TOLD)
            .toList();
    if (better.isEmpty()) {
      lines.paragraph("  ", "Nothing that was tried explains it better than the drawing as it is.");
      return;
    }
    lines.paragraph(
        "  ",
        "What would explain it, the best fit first. A good fit is no proof: several causes look"
            + " alike, and the real one may not be here.");
    for (Cause.Ranked ranked : better) {
      ranked
          .misfit()
          .ifPresent(
              misfit ->
                  lines.paragraph(
                      "    ", "      ", words.of(ranked.cause()) + ": " + left(misfit, wording)));
    }
  }

  private static double average(Cause.Ranked ranked) {
    return ranked.misfit().map(Cause.Misfit::average).orElse(Double.POSITIVE_INFINITY);
  }

  /** The drawing as it is has an answer: nothing else is rehearsed. */
  private static Cause.Misfit drawn(Rehearsed rehearsed) {
    return rehearsed.causes().stream()
        .filter(ranked -> ranked.cause() instanceof Cause.AsDrawn)
        .flatMap(ranked -> ranked.misfit().stream())
        .findFirst()
        .orElseThrow();
  }

  private static String left(Cause.Misfit misfit, Wording wording) {
    return "on average "
        + wording.amounts().level(misfit.average())
        + " are left unexplained, at most "
        + wording.amounts().level(misfit.most());
  }

  /** For keeping. */
  public static String json(List<Rehearsed> all, About about, Wording wording) {
    ObjectNode root = JsonText.root();
    root.put("rehearsal", VERSION);
    root.put("drawing", about.drawing()).put("sha256", about.fingerprint());
    about.sheet().ifPresent(sheet -> root.put("sheetMadeFor_sha256", sheet));
    root.put("date", about.date()).put("program", about.program());
    root.put("tolerance_mm", tenths(Rehearsal.TOLERANCE));
    ArrayNode list = root.putArray("rehearsed");
    CauseWords words = new CauseWords(wording);
    for (Rehearsed rehearsed : all) {
      ObjectNode into = list.addObject().put("failure", FailureNames.id(rehearsed.failure()));
      ArrayNode levels = into.putArray("levels");
      rehearsed.levels().forEach(level -> level(levels.addObject(), level));
      ArrayNode causes = into.putArray("causes");
      for (Cause.Ranked ranked : rehearsed.causes()) {
        ObjectNode cause = causes.addObject().put("cause", words.of(ranked.cause()));
        ranked
            .misfit()
            .ifPresent(
                misfit ->
                    cause
                        .put("unexplainedOnAverage_mm", tenths(misfit.average()))
                        .put("unexplainedAtMost_mm", tenths(misfit.most())));
      }
    }
    root.put("statement", Cautions.STATEMENT);
    return JsonText.of(root);
  }

  private static void level(ObjectNode into, Level level) {
    into.put("vessel", level.vessel());
    level
        .before()
        .ifPresent(
            before ->
                into.put("expectedBeforeBelowRim_mm", tenths(before.expected()))
                    .put("measuredBeforeBelowRim_mm", tenths(before.measured())));
    into.put("expectedBelowRim_mm", tenths(level.after().expected()))
        .put("measuredBelowRim_mm", tenths(level.after().measured()))
        .put("withinTolerance", level.fits(Rehearsal.TOLERANCE))
        .put("measuredBy", level.by());
  }

  private static double tenths(double metres) {
    return Math.round(metres * MM * 10) / 10.0;
  }
}
