package dryfloor.app.drawing;

import java.util.Locale;

/** What a shape means, which decides how it looks. */
public enum Style {
  PAPER,
  SLAB,
  ROOM,
  STAND,
  TANK_INSIDE,
  WATER,
  WATER_GAINED,
  WATER_GONE,
  LEVEL_BEFORE,
  LEVEL_AFTER,
  WALL,
  BASIN_WALL,
  PIPE_EDGE,
  PIPE,
  PIPE_DRY,
  PIPE_BEHIND,
  SYMBOL,
  SYMBOL_FILLED,
  BREAK_OPEN,
  FAILED,
  MARKED,
  FLOW,
  FLOW_HEAD,
  SPILL,
  SPILL_HEAD,
  WET,
  RULE,
  LEADER,
  BOX,
  TITLE,
  SUBTITLE,
  HEADING,
  NAME,
  NOTE,
  SMALL,
  STORY_TIME,
  STORY,
  FLOW_TEXT,
  WET_TEXT,
  CAUGHT_TEXT,
  DRY_TEXT,
  UNKNOWN_TEXT;

  /** As it is called in a style sheet: {@code WATER_GAINED} is water-gained. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
