package dryfloor.app.report;

import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Style;
import dryfloor.model.element.Vessel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A drawing as it is drawn, its water at the declared levels: nothing is known of what happens. */
public final class DraftScene {

  private DraftScene() {}

  /**
   * The scene of a drawing without answers.
   *
   * @param title of the picture
   * @param sentence why there are no answers
   */
  public static Scene of(Wording wording, String title, String sentence) {
    Names names = wording.names();
    Map<String, Scene.Water> waters = new HashMap<>();
    for (Vessel vessel : wording.installation().vessels()) {
      waters.put(
          vessel.id(),
          new Scene.Water(vessel.level(), vessel.level(), names.label(vessel.id()), ""));
    }
    Map<String, String> states = new HashMap<>();
    wording.installation().supplies().forEach(s -> states.put(s.id(), names.label(s.id())));
    wording.installation().drains().forEach(d -> states.put(d.id(), names.label(d.id())));
    return new Scene(
        wording.installation().name(),
        title,
        "?",
        Style.UNKNOWN_TEXT,
        sentence,
        waters,
        Map.of(),
        List.of(),
        states,
        Set.of(),
        List.of(),
        List.of(),
        new SceneHeights(wording.amounts()),
        Cautions.STATEMENT);
  }
}
