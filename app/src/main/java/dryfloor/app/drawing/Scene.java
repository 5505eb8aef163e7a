package dryfloor.app.drawing;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the water did, and all the words of the picture.
 *
 * @param title of the picture
 * @param subtitle under it
 * @param sign and word of the verdict
 * @param verdict how the verdict is to look
 * @param sentence the verdict in words
 * @param waters levels of each vessel by id
 * @param wet floors that got water, by id, and what is said of them
 * @param flows water that went somewhere
 * @param states what is said of a part or pipe by id, as "stopped"
 * @param failed ids of what failed
 * @param story what happened
 * @param levels lines of the table of levels
 * @param heights labels of elevations
 * @param closing what the picture is and is not
 */
public record Scene(
    String title,
    String subtitle,
    String sign,
    Style verdict,
    String sentence,
    Map<String, Water> waters,
    Map<String, String> wet,
    List<Flow> flows,
    Map<String, String> states,
    Set<String> failed,
    List<Moment> story,
    List<LevelLine> levels,
    Heights heights,
    String closing) {

  public Scene {
    waters = Map.copyOf(waters);
    wet = Map.copyOf(wet);
    flows = List.copyOf(flows);
    states = Map.copyOf(states);
    failed = Set.copyOf(failed);
    story = List.copyOf(story);
    levels = List.copyOf(levels);
  }

  /**
   * The water in a vessel.
   *
   * @param before its level in normal operation (m)
   * @param after its final level (m)
   * @param name of the vessel
   * @param note what became of it, as "+40 L, full to the rim"
   */
  public record Water(double before, double after, String name, String note) {}

  /**
   * Water that went over one path.
   *
   * @param path id of the run, weir, vessel or floor
   * @param kind how it went
   * @param from id of the place that gave it
   * @param to id of the place that took it
   * @param text how much; empty where the arrow alone says enough
   */
  public record Flow(String path, Kind kind, String from, String to, String text) {

    /** How water goes; a wall lets it out at its foot, where a seam leaks or the wall fails. */
    public enum Kind {
      PIPE,
      PIPE_BACKWARDS,
      EDGE,
      SPILL,
      WALL,
      PIPE_SPILL,
      SILL
    }
  }

  /** A moment of the story. */
  public record Moment(String time, String sentence) {}

  /** A line of the table of levels: vessel, before, after, below the rim. */
  public record LevelLine(String name, String before, String after, String belowRim) {}

  /** How elevations are labelled. */
  public interface Heights {

    /** The label of an elevation (m) in the building. */
    String label(double elevation);

    /** The steps of the scale (m) and what each is called. */
    double step();

    /** The unit of the scale. */
    String unit();

    /** An elevation in that unit. */
    String number(double elevation);
  }
}
