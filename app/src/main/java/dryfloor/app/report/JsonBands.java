package dryfloor.app.report;

import dryfloor.analysis.band.Band;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Figures;
import dryfloor.analysis.band.Point;
import dryfloor.analysis.band.Range;
import dryfloor.analysis.band.Sampled;
import dryfloor.analysis.band.Swing;
import dryfloor.analysis.band.Weight;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.model.file.UncertainValue;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Bands as JSON. */
public final class JsonBands {

  private static final double LITRES = 1000;
  private static final double MILLIMETRES = 1000;

  private final Wording wording;
  private final List<UncertainValue> values;
  private final UncertainWords words;
  private final ObjectNode node;

  /** Bands to be put into a node. */
  public JsonBands(Wording wording, List<UncertainValue> values, ObjectNode node) {
    this.wording = wording;
    this.values = values;
    this.words = new UncertainWords(values, wording);
    this.node = node;
  }

  /** Puts all that was found. */
  public void put(BandResult bands) {
    ArrayNode uncertain = node.putArray("values");
    bands.weights().forEach(weight -> value(uncertain.addObject(), weight));
    ArrayNode failures = node.putArray("failures");
    bands.bands().forEach(band -> band(failures.addObject(), band, bands));
    ArrayNode unsound = node.putArray("notJudged");
    for (BandResult.Unsound point : bands.unsound()) {
      ObjectNode into = unsound.addObject();
      point(into.putObject("at"), point.point());
      into.put("drawable", point.drawable()).put("reason", point.reason());
    }
    node.put("points", bands.points()).put("everyCorner", bands.everyCorner());
    bands.sampled().ifPresent(some -> sampled(node.putObject("samples"), some));
  }

  private void value(ObjectNode into, Weight weight) {
    UncertainValue value = values.get(weight.value());
    into.put("id", value.id())
        .put("name", words.name(weight.value()))
        .put("quantities", value.quantities())
        .put("from", words.text(weight.value(), -1))
        .put("asDrawn", words.text(weight.value(), 0))
        .put("to", words.text(weight.value(), 1))
        .put("verdictsThatChange", weight.verdicts());
    JsonOutcome.number(into, "onFloorsChange_L", weight.onFloors() * LITRES);
    JsonOutcome.number(into, "marginChange_mm", weight.margin() * MILLIMETRES);
  }

  private void band(ObjectNode into, Band band, BandResult bands) {
    into.put("id", FailureNames.id(band.failure()))
        .put("name", FailureNames.name(band.failure(), wording.installation()))
        .put("asDrawn", BandWords.answer(band.drawn()).name());
    reached(into.putObject("worst"), band.worst());
    reached(into.putObject("best"), band.best());
    range(into, "onFloors_L", band.onFloors(), LITRES);
    range(into, "margin_mm", band.margin(), MILLIMETRES);
    band.most().ifPresent(most -> into.put("mattersMost", values.get(most.value()).id()));
    ArrayNode alone = into.putArray("alone");
    band.swings().stream().filter(Swing::matters).forEach(s -> swing(alone.addObject(), s));
    ArrayNode inDoubt = into.putArray("inDoubt");
    band.inDoubt().forEach(inDoubt::add);
    bands.sampled().ifPresent(some -> into.put("drySamples", some.dryAfter(band.failure())));
  }

  private void reached(ObjectNode into, Band.Reached reached) {
    into.put("answer", BandWords.answer(reached.figures()).name());
    switch (reached.figures()) {
      case Figures.Known known -> {
        JsonOutcome.number(into, "onFloors_L", known.onFloors() * LITRES);
        JsonOutcome.number(into, "margin_mm", known.margin() * MILLIMETRES);
      }
      case Figures.Unknown open -> into.put("reason", open.reason());
    }
    point(into.putObject("at"), reached.point());
  }

  private void swing(ObjectNode into, Swing swing) {
    into.put("value", values.get(swing.value()).id()).put("verdicts", swing.verdicts());
    JsonOutcome.number(into, "onFloors_L", swing.onFloors() * LITRES);
    JsonOutcome.number(into, "margin_mm", swing.margin() * MILLIMETRES);
  }

  private void point(ObjectNode into, Point point) {
    for (int i = 0; i < values.size(); i++) {
      into.put(values.get(i).id(), words.text(i, point.shares().get(i)));
    }
  }

  private static void range(ObjectNode into, String field, Range range, double scale) {
    if (!Double.isNaN(range.from())) {
      ObjectNode ends = into.putObject(field);
      JsonOutcome.number(ends, "from", range.from() * scale);
      JsonOutcome.number(ends, "to", range.to() * scale);
    }
  }

  private static void sampled(ObjectNode into, Sampled sampled) {
    into.put("number", sampled.sampling().samples())
        .put("seed", sampled.sampling().seed())
        .put("dry", sampled.dry());
  }
}
