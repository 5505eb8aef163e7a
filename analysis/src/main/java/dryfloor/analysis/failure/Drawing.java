package dryfloor.analysis.failure;

import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An installation with its elements and parts found by id, and listed by id where an order is
 * needed, so that nothing depends on the order of the file.
 */
final class Drawing {

  private final Installation installation;
  private final Map<String, Element> elements = new HashMap<>();
  private final Map<String, Fitted<Part>> parts = new HashMap<>();

  /** A part and the run in which it sits. */
  record Fitted<P extends Part>(Run run, P part) {}

  Drawing(Installation installation) {
    this.installation = installation;
    installation.elements().forEach(element -> elements.put(element.id(), element));
    for (Run run : installation.runs()) {
      run.parts().forEach(part -> parts.put(part.id(), new Fitted<>(run, part)));
    }
  }

  Installation installation() {
    return installation;
  }

  static <E extends Element> Stream<E> byId(List<E> elements) {
    return elements.stream().sorted(Comparator.comparing(Element::id));
  }

  /** Every part of a kind, by id. */
  <P extends Part> Stream<Fitted<P>> parts(Class<P> kind) {
    return parts.values().stream()
        .filter(fitted -> kind.isInstance(fitted.part()))
        .map(fitted -> new Fitted<>(fitted.run(), kind.cast(fitted.part())))
        .sorted(Comparator.comparing(fitted -> fitted.part().id()));
  }

  /**
   * The sequence with this id.
   *
   * @throws IllegalArgumentException if the drawing has none
   */
  Sequence sequence(String id) {
    return installation.failureSettings().sequences().stream()
        .filter(sequence -> sequence.id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("the drawing has no sequence \"" + id + "\""));
  }

  /**
   * The element of a kind with this id.
   *
   * @throws IllegalArgumentException if the drawing has none
   */
  <E extends Element> E element(Class<E> kind, String id) {
    Element element = elements.get(id);
    if (element == null || !kind.isInstance(element)) {
      throw missing(kind, id);
    }
    return kind.cast(element);
  }

  /**
   * The part of a kind with this id.
   *
   * @throws IllegalArgumentException if the drawing has none
   */
  <P extends Part> Fitted<P> part(Class<P> kind, String id) {
    Fitted<Part> fitted = parts.get(id);
    if (fitted == null || !kind.isInstance(fitted.part())) {
      throw missing(kind, id);
    }
    return new Fitted<>(fitted.run(), kind.cast(fitted.part()));
  }

  Run run(String id) {
    return element(Run.class, id);
  }

  Vessel vessel(String id) {
    return element(Vessel.class, id);
  }

  boolean isVessel(String id) {
    return elements.get(id) instanceof Vessel;
  }

  boolean isFloor(String id) {
    return elements.get(id) instanceof Floor;
  }

  /** Whether a place is dry in normal operation: a basin or a floor. */
  boolean isDryPlace(String id) {
    return isFloor(id) || (elements.get(id) instanceof Vessel vessel && vessel.isBasin());
  }

  /** Lowest elevation of a vessel or floor (m). */
  double bottomOf(String place) {
    return isVessel(place) ? vessel(place).bottom() : element(Floor.class, place).elevation();
  }

  /** Whether a run starts in a basin or on a floor, to take away what lands there. */
  boolean drainsDryPlace(Run run) {
    return run.from() instanceof RunEnd.Opening opening && isDryPlace(opening.at());
  }

  /** Whether a run carries nothing in normal operation, so that nobody sees what is wrong in it. */
  boolean isDormant(Run run) {
    return run.duty() == Run.Duty.EMERGENCY || drainsDryPlace(run);
  }

  /** Whether this part sits in a run that carries nothing in normal operation. */
  boolean isInDormantRun(String part) {
    Fitted<Part> fitted = parts.get(part);
    return fitted != null && isDormant(fitted.run());
  }

  /** Whether any control switches this part. */
  boolean isSwitched(String part) {
    return installation.controls().stream().anyMatch(control -> control.drives().contains(part));
  }

  private static IllegalArgumentException missing(Class<?> kind, String id) {
    return new IllegalArgumentException(
        "the drawing has no " + kind.getSimpleName() + " with the id \"" + id + "\"");
  }
}
