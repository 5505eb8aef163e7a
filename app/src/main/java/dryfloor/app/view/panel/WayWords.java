package dryfloor.app.view.panel;

import dryfloor.app.drawing.Scene;
import dryfloor.app.report.Names;
import dryfloor.app.view.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The ways of water as text. */
public final class WayWords {

  private WayWords() {}

  /** Each way with its litres, for those worth telling. */
  static List<String> all(Scene scene, Names names) {
    return scene.flows().stream()
        .filter(flow -> !flow.text().isEmpty())
        .map(flow -> text(flow, names))
        .toList();
  }

  /** What goes over one path or out of one vessel; nothing where nothing does. */
  public static Optional<String> of(Scene scene, Names names, String id) {
    String text =
        scene.flows().stream()
            .filter(flow -> flow.path().equals(id) && !flow.text().isEmpty())
            .map(flow -> text(flow, names))
            .collect(Collectors.joining("\n"));
    return Optional.of(text).filter(words -> !words.isEmpty());
  }

  private static String text(Scene.Flow flow, Names names) {
    String path = names.label(flow.path());
    boolean told = flow.to().isEmpty() || flow.to().equals(flow.path());
    return told
        ? Words.of("ways.line", path, flow.text())
        : Words.of("ways.line.to", path, names.label(flow.to()), flow.text());
  }
}
