package dryfloor.app.view.file;

import dryfloor.app.view.learn.Round;
import dryfloor.app.view.learn.Score;
import dryfloor.app.view.learn.Scores;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The scores of lessons in the settings; what no lesson can have ended with is left out. */
final class ScoresNode {

  private ScoresNode() {}

  static void write(ArrayNode node, Scores scores) {
    scores
        .sets()
        .forEach(
            (set, score) -> {
              ObjectNode one = node.addObject().put("set", set);
              score.best().ifPresent(best -> write(one.putObject("best"), best));
              write(one.putObject("last"), score.last());
              one.put("finished", score.finished());
            });
  }

  private static void write(ObjectNode node, Round round) {
    node.put("points", round.points()).put("done", round.done()).put("of", round.of());
  }

  static Scores read(JsonNode node) {
    Map<String, Score> sets = new LinkedHashMap<>();
    for (JsonNode one : node) {
      Optional<Round> best = round(one.path("best")).filter(Round::isFinished);
      int finished = Math.max(best.isPresent() ? 1 : 0, one.path("finished").asInt(0));
      String set = one.path("set").asString("");
      round(one.path("last"))
          .filter(last -> !set.isEmpty())
          .ifPresent(last -> sets.put(set, new Score(best, last, best.isPresent() ? finished : 0)));
    }
    return new Scores(sets);
  }

  private static Optional<Round> round(JsonNode node) {
    Round round =
        new Round(
            node.path("points").asInt(-1), node.path("done").asInt(0), node.path("of").asInt(0));
    return Optional.of(round).filter(Round::isSensible);
  }
}
