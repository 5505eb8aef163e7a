package dryfloor.app.paper;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.app.report.JsonBands;
import dryfloor.app.report.JsonText;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the papers say, for other programs: the worksheet, the emergency card, the marks, what is
 * expected in a rehearsal, and levels over time and ways of the water. Numbers are always metric,
 * the unit at the end of each name; sentences are in the reader's units. All that was computed is
 * in the JSON answer of the check.
 */
public final class ReportJson {

  /** Rises when a field goes or means something else. */
  private static final int VERSION = 1;

  private ReportJson() {}

  /** The text of the file. */
  public static String of(Report report, Question question) {
    ObjectNode root = JsonText.root();
    root.put("report", VERSION);
    drawing(root.putObject("drawing"), report.drawing());
    root.put("installation", report.owner().installation());
    finding(root.putObject("powerLoss"), report.owner().power());
    report.owner().worst().ifPresent(worst -> finding(root.putObject("worst"), worst));
    ArrayNode better = root.putArray("better");
    report.owner().better().forEach(better::add);
    worksheet(root, report.worksheet());
    ArrayNode card = root.putArray("emergencyCard");
    report.card().cases().forEach(emergency -> emergency(card.addObject(), emergency));
    ArrayNode list = root.putArray("marks");
    question.marks().forEach(mark -> mark(list.addObject(), mark));
    JsonRehearsals.put(root.putArray("rehearsals"), report, question.sweep());
    ArrayNode courses = root.putArray("courses");
    CourseWords.interesting(question.sweep())
        .forEach(answered -> JsonCourse.put(courses.addObject(), question.wording(), answered));
    question
        .banded()
        .ifPresent(
            banded ->
                new JsonBands(question.wording(), banded.values(), root.putObject("bands"))
                    .put(banded.bands()));
    root.put("statement", report.statement());
    return JsonText.of(root);
  }

  private static void drawing(ObjectNode into, Report.Drawing drawing) {
    into.put("name", drawing.name());
    into.put("file", drawing.file());
    into.put("sha256", drawing.fingerprint());
    into.put("date", drawing.date());
    into.put("program", drawing.program());
    into.put("away", drawing.away());
  }

  private static void finding(ObjectNode into, Report.Finding finding) {
    into.put("answer", finding.kind());
    into.put("failure", finding.failure());
    into.put("sentence", finding.sentence());
    into.put("timeToReact", finding.time());
  }

  private static void worksheet(ObjectNode root, Report.Worksheet worksheet) {
    ObjectNode scale = root.putObject("severityScale");
    worksheet.scale().forEach(step -> scale.put(step.number(), step.meaning()));
    ArrayNode rows = root.putArray("worksheet");
    for (WorksheetRow row : worksheet.rows()) {
      ObjectNode into = rows.addObject();
      into.put("id", row.id());
      into.put("severity", row.severity());
      into.put("item", row.item());
      into.put("function", row.function());
      into.put("failureMode", row.mode());
      into.put("cause", row.cause());
      into.put("localEffect", row.localEffect());
      into.put("finalEffect", row.finalEffect());
      into.put("occurrence", row.occurrence());
      into.put("detection", row.detection());
      into.put("presentControl", row.control());
      into.put("recommendedAction", row.action());
    }
  }

  private static void emergency(ObjectNode into, Report.Emergency emergency) {
    finding(into, emergency.finding());
    into.put("seenFirst", emergency.seen());
    ArrayNode steps = into.putArray("steps");
    emergency.steps().forEach(steps::add);
  }

  private static void mark(ObjectNode into, VesselMarks mark) {
    into.put("vessel", mark.vessel());
    into.put("rim_mm", millimetres(mark.rim() - mark.bottom()));
    into.put("normal_mm", millimetres(mark.normal() - mark.bottom()));
    into.put("afterPowerLoss_mm", millimetres(mark.afterPowerLoss() - mark.bottom()));
    into.put("powerLoss", mark.powerLoss().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    if (mark.highestSafe().isPresent()) {
      into.put("highestSafe_mm", millimetres(mark.highestSafe().getAsDouble() - mark.bottom()));
    }
  }

  private static double millimetres(double metres) {
    return Math.round(metres * 10_000) / 10.0;
  }
}
