package dryfloor.app.view.picture;

import dryfloor.app.drawing.Handle;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.model.element.Vessel;
import java.util.Optional;

/** Says what a handle sets, and at what height it is. */
final class HandleWords {

  private HandleWords() {}

  static String of(Handle handle, Wording wording) {
    String name = wording.names().label(handle.id());
    String height = height(handle, wording);
    return switch (handle.kind()) {
      case LEVEL -> Words.of("handle.level", name, height, belowRim(handle, wording));
      case RIM -> Words.of("handle.rim", name, height);
      case WEIR -> Words.of("handle.weir", name, height);
      case SIPHON_BREAK -> Words.of("handle.break", name, height);
      case LIP -> Words.of("handle.lip", name, height);
      case PORT -> Words.of("handle.port", name, height);
      case FREE_END -> Words.of("handle.free", name, height);
      case WAYPOINT -> Words.of("handle.waypoint", name, height);
    };
  }

  /** Above the bottom of the vessel, or in the building where it belongs to none. */
  private static String height(Handle handle, Wording wording) {
    boolean inBuilding = handle.base() == 0 || handle.kind() == Handle.Kind.WAYPOINT;
    return inBuilding
        ? wording.amounts().elevation(handle.elevation())
        : wording.amounts().level(handle.height());
  }

  private static String belowRim(Handle handle, Wording wording) {
    Optional<Vessel> vessel =
        wording.installation().vessels().stream()
            .filter(v -> v.id().equals(handle.id()))
            .findFirst();
    return vessel.map(v -> wording.amounts().level(v.rim() - handle.elevation())).orElse("");
  }
}
