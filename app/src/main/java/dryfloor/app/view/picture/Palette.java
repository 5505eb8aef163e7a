package dryfloor.app.view.picture;

import dryfloor.app.drawing.Shape;
import dryfloor.app.drawing.Style;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import javafx.scene.text.FontWeight;

/**
 * How each style looks on the screen: paper and ink, water the only blue, red for wet floors alone.
 */
record Palette(
    Color paper,
    Color room,
    Color ink,
    Color faint,
    Color stand,
    Color edge,
    Color water,
    Color strongWater,
    Color level,
    Color wet,
    Color wetPale,
    Color caught,
    Color dry,
    Color unknown) {

  /** Ink on paper. */
  static final Palette LIGHT =
      new Palette(
          Color.web("#fcfbf7"),
          Color.web("#ffffff"),
          Color.web("#22303a"),
          Color.web("#65717a"),
          Color.web("#eeebe2"),
          Color.web("#d3cdbd"),
          Color.web("#a9cfe4"),
          Color.web("#2b78ab"),
          Color.web("#174f78"),
          Color.web("#b3261e"),
          Color.web("#f8ddd9"),
          Color.web("#8a5d00"),
          Color.web("#23664c"),
          Color.web("#6b3f7d"));

  /** Chalk on a board. */
  static final Palette DARK =
      new Palette(
          Color.web("#1b2126"),
          Color.web("#232b31"),
          Color.web("#e4e9ec"),
          Color.web("#9aa7b0"),
          Color.web("#2d353b"),
          Color.web("#46515a"),
          Color.web("#2f5f7d"),
          Color.web("#5fb0e0"),
          Color.web("#9fd4f5"),
          Color.web("#ff7a70"),
          Color.web("#4a2422"),
          Color.web("#f0b64c"),
          Color.web("#6fcf9f"),
          Color.web("#d3a3e6"));

  /**
   * How a style is painted.
   *
   * @param fill of areas and letters, or transparent
   * @param stroke of lines, or transparent
   * @param width of lines (points)
   * @param dashes of lines (points), none for a whole one
   * @param weight of letters
   */
  record Look(Paint fill, Paint stroke, double width, List<Double> dashes, FontWeight weight) {}

  /** How marks are painted that water takes with it: water inside of a pipe. */
  Look marks() {
    return line(water, 2.2, Shape.Stream.MARK, Shape.Stream.APART - Shape.Stream.MARK);
  }

  Look look(Style style) {
    return switch (style) {
      case PAPER -> area(paper);
      case ROOM -> edged(room, edge, 1);
      case SLAB -> edged(hatch(stand, edge, 9), faint, 1);
      case STAND -> edged(stand, edge, 1);
      case TANK_INSIDE -> area(room);
      case WATER -> area(water);
      case WATER_GAINED -> area(strongWater);
      case WATER_GONE -> area(hatch(room, strongWater.deriveColor(0, 0.7, 1.2, 0.6), 6));
      case LEVEL_BEFORE -> line(strongWater, 1.3, 6.0, 4.0);
      case LEVEL_AFTER -> line(level, 2);
      case WALL -> line(ink, 3);
      case BASIN_WALL -> line(ink, 4.5);
      case PIPE_EDGE -> line(room, 7);
      case PIPE -> line(ink.deriveColor(0, 1, 1, 0.8), 3.2);
      case PIPE_DRY -> line(faint, 2.4);
      case PIPE_BEHIND -> line(faint, 1.4, 2.0, 4.0);
      case SYMBOL -> edged(room, ink, 1.6);
      case SYMBOL_FILLED -> area(ink);
      case BREAK_OPEN -> edged(room, unknown, 2.4);
      case FAILED -> line(wet, 2.2, 3.0, 2.0);
      case MARKED -> line(ink, 2);
      case FLOW -> line(strongWater, 3.4);
      case FLOW_HEAD -> edged(strongWater, room, 0.8);
      case SPILL -> line(wet, 2.6, 2.5, 3.0);
      case SPILL_HEAD -> area(wet);
      case WET -> edged(hatch(wetPale, wet, 8), wet, 1.4);
      case RULE -> line(faint, 1);
      case LEADER -> line(faint, 0.8);
      case BOX -> edged(room, edge, 1);
      case TITLE -> letters(ink, FontWeight.BOLD);
      case HEADING, NAME -> letters(ink, FontWeight.SEMI_BOLD);
      case STORY -> letters(ink, FontWeight.NORMAL);
      case SUBTITLE, NOTE, SMALL -> letters(faint, FontWeight.NORMAL);
      case STORY_TIME, FLOW_TEXT -> letters(strongWater, FontWeight.SEMI_BOLD);
      case WET_TEXT -> letters(wet, FontWeight.BOLD);
      case CAUGHT_TEXT -> letters(caught, FontWeight.BOLD);
      case DRY_TEXT -> letters(dry, FontWeight.BOLD);
      case UNKNOWN_TEXT -> letters(unknown, FontWeight.BOLD);
    };
  }

  private static Look area(Paint fill) {
    return new Look(fill, Color.TRANSPARENT, 0, List.of(), FontWeight.NORMAL);
  }

  private static Look edged(Paint fill, Paint stroke, double width) {
    return new Look(fill, stroke, width, List.of(), FontWeight.NORMAL);
  }

  private static Look line(Paint stroke, double width, Double... dashes) {
    return new Look(Color.TRANSPARENT, stroke, width, List.of(dashes), FontWeight.NORMAL);
  }

  private static Look letters(Paint fill, FontWeight weight) {
    return new Look(fill, Color.TRANSPARENT, 0, List.of(), weight);
  }

  private static Paint hatch(Color ground, Color stripe, double width) {
    return new LinearGradient(
        0,
        0,
        width / 2,
        width / 2,
        false,
        CycleMethod.REPEAT,
        new Stop(0, ground),
        new Stop(0.6, ground),
        new Stop(0.6, stripe),
        new Stop(1, stripe));
  }
}
