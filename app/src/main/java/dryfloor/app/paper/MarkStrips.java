package dryfloor.app.paper;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.Wording;
import dryfloor.model.unit.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lays marks out on strips: the rim is zero, and downwards it goes at true scale. */
final class MarkStrips {

  /** Margins, head and check line of a sheet take this much (mm). */
  private static final double HEAD_AND_FOOT = 76;

  private static final double MM = 1000;

  /** So much is shown beyond the first and the last mark (mm). */
  private static final double BEYOND = 15;

  /** Words of marks are at least this far apart (mm). */
  private static final double LINE = 5;

  private static final double INCH = 25.4;
  private static final double SHORT = 4;
  private static final double MIDDLE = 6;
  private static final double LONG = 9;

  private final Wording wording;

  /** A strip that need not begin at the rim begins at a multiple of this (mm). */
  private final double step;

  private final double room;

  private MarkStrips(Wording wording, PaperSize size) {
    this.wording = wording;
    this.step =
        switch (wording.amounts().units()) {
          case METRIC -> 50;
          case US -> 2 * INCH;
        };
    this.room = Math.floor((size.height() - HEAD_AND_FOOT) / step) * step;
  }

  /** The sheets for these vessels. */
  static List<MarkStrip> of(Wording wording, List<VesselMarks> marks, PaperSize size) {
    MarkStrips strips = new MarkStrips(wording, size);
    return marks.stream().flatMap(vessel -> strips.sheets(vessel).stream()).toList();
  }

  /** A mark by its depth below the rim (mm). */
  private record Mark(double depth, String words) {}

  private List<MarkStrip> sheets(VesselMarks vessel) {
    List<Mark> marks = marks(vessel);
    double first = marks.getFirst().depth() - BEYOND;
    double begin = first < step ? 0 : Math.floor(first / step) * step;
    double end = marks.getLast().depth() + BEYOND;
    int count = (int) Math.max(1, Math.ceil((end - begin) / room));
    List<MarkStrip> sheets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = begin + i * room;
      sheets.add(
          sheet(
              vessel,
              (i + 1) + " of " + count,
              begins(from, i == 0),
              from,
              Math.min(room, end - from),
              marks));
    }
    return sheets;
  }

  private List<Mark> marks(VesselMarks vessel) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        mark(
            "Normal level",
            vessel,
            vessel.normal(),
            MarkHeights.below(amounts(), vessel, vessel.normal())));
    marks.add(
        mark(
            "After a power loss",
            vessel,
            vessel.afterPowerLoss(),
            MarkHeights.belowAfterPowerLoss(amounts(), vessel)));
    vessel
        .highestSafe()
        .ifPresent(
            level ->
                marks.add(
                    mark(
                        MarkHeights.HIGHEST,
                        vessel,
                        level,
                        MarkHeights.below(amounts(), vessel, level))));
    marks.sort(Comparator.comparingDouble(Mark::depth));
    return marks;
  }

  private Mark mark(String what, VesselMarks vessel, double level, String below) {
    return new Mark(
        Math.max(0, vessel.rim() - level) * MM,
        what
            + ": "
            + below
            + ", "
            + amounts().level(level - vessel.bottom())
            + " above the bottom");
  }

  private MarkStrip sheet(
      VesselMarks vessel,
      String number,
      String begins,
      double from,
      double length,
      List<Mark> marks) {
    return new MarkStrip(
        wording.names().label(vessel.vessel()),
        number,
        begins,
        said(vessel),
        length,
        check(),
        ticks(from, length),
        lines(from, length, marks));
  }

  /** What the highest level means, or why there is none. */
  private static String said(VesselMarks vessel) {
    if (vessel.highestSafe().isEmpty()) {
      return vessel.powerLoss() == VesselMarks.PowerLoss.WETS_A_FLOOR
          ? MarkHeights.NONE_IS_SAFE + "."
          : "";
    }
    return "Up to the highest level, running, no single failure wets a floor that wets none today."
        + (vessel.powerLoss() == VesselMarks.PowerLoss.KEEPS_WHILE_A_FLOOR_GETS_WET
            ? " A power loss does today."
            : "");
  }

  private String begins(double from, boolean first) {
    return from == 0
        ? "the upper edge of the rim"
        : amounts().level(from / MM)
            + " below the rim; "
            + (first ? "above it there is no mark" : "the sheet before ends here");
  }

  private MarkStrip.Check check() {
    return switch (wording.amounts().units()) {
      case METRIC -> new MarkStrip.Check(100, "100 mm");
      case US -> new MarkStrip.Check(4 * INCH, "4 in");
    };
  }

  private List<MarkStrip.Tick> ticks(double from, double length) {
    double step = wording.amounts().units() == Units.METRIC ? 1 : INCH / 8;
    int big = wording.amounts().units() == Units.METRIC ? 10 : 8;
    List<MarkStrip.Tick> ticks = new ArrayList<>();
    for (int i = (int) Math.ceil(from / step - 1e-9); i * step <= from + length + 1e-9; i++) {
      boolean labelled = i % big == 0;
      double size = labelled ? LONG : i % (big / 2) == 0 ? MIDDLE : SHORT;
      String label = labelled ? String.valueOf(big == 10 ? i : i / big) : "";
      ticks.add(new MarkStrip.Tick(i * step - from, size, label));
    }
    return ticks;
  }

  private static List<MarkStrip.Line> lines(double from, double length, List<Mark> marks) {
    List<MarkStrip.Line> lines = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (Mark mark : marks) {
      double down = mark.depth() - from;
      if (down >= 0 && down < length) {
        double words = Math.max(down, free);
        lines.add(new MarkStrip.Line(down, words, mark.words()));
        free = words + LINE;
      }
    }
    return lines;
  }

  private Amounts amounts() {
    return wording.amounts();
  }
}
