package dryfloor.model.check;

import dryfloor.model.FailureSettings;
import dryfloor.model.Sequence;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Checks that sequences of events make sense in time. Whether the failures they name can happen at
 * all is known only to those who compute the list of failures.
 */
final class SequenceCheck {

  private final Drawing drawing;
  private final Findings findings;

  SequenceCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    FailureSettings settings = drawing.installation().failureSettings();
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < settings.sequences().size(); i++) {
      Sequence sequence = settings.sequences().get(i);
      String path = "failures.sequences[" + i + "]";
      checkId(path + ".id", sequence.id(), ids);
      if (sequence.events().isEmpty()) {
        findings.error(
            "",
            path + ".events",
            "nothing happens in the sequence '" + sequence.id() + "'",
            "at least one event, such as {\"at\": \"0 s\", \"begins\": \"power-lost.building\"}");
      }
      checkEvents(path + ".events", sequence.events());
    }
  }

  private void checkId(String field, String id, Set<String> ids) {
    if (!IdCheck.isWellFormed(id)) {
      findings.error("", field, "'" + id + "' is no id", IdCheck.WELL_FORMED_IN_WORDS);
    } else if (!ids.add(id)) {
      findings.error(
          "",
          field,
          "another sequence is called '" + id + "' already",
          "give one of the two another id");
    }
  }

  private void checkEvents(String path, List<Sequence.Event> events) {
    Set<String> going = new HashSet<>();
    double last = 0;
    for (int i = 0; i < events.size(); i++) {
      Sequence.Event event = events.get(i);
      checkTime(path + "[" + i + "].at", event.time(), last);
      last = event.time();
      checkEvent(path + "[" + i + "]", event, going);
    }
  }

  private void checkTime(String field, double time, double last) {
    if (time < 0) {
      findings.error("", field, "an event before the beginning", "0 s or later");
    } else if (time < last) {
      findings.error(
          "",
          field,
          "this event comes before the one above it",
          "events in the order of their times, each counted from the beginning of the sequence");
    }
  }

  private void checkEvent(String path, Sequence.Event event, Set<String> going) {
    switch (event) {
      case Sequence.Event.Begins begins -> {
        if (!going.add(begins.failure())) {
          findings.error(
              "",
              path + ".begins",
              "'" + begins.failure() + "' has begun already and is not over",
              "an event that ends it before it begins again");
        }
      }
      case Sequence.Event.Ends ends -> {
        if (!going.remove(ends.failure())) {
          findings.error(
              "",
              path + ".ends",
              "'" + ends.failure() + "' ends here but has not begun",
              "an earlier event that begins it");
        }
      }
      case Sequence.Event.Pours pours -> checkVessel(path, "into", pours.vessel());
      case Sequence.Event.Takes takes -> {
        checkVessel(path, "from", takes.vessel());
        drawing
            .vessel(takes.vessel())
            .filter(vessel -> takes.downTo() >= vessel.shape().height())
            .ifPresent(
                vessel ->
                    findings.error(
                        "",
                        path + ".downTo",
                        "nothing of '" + takes.vessel() + "' can be taken: this is above its rim",
                        "a height above its bottom and below its rim, such as \"50 mm\""));
      }
    }
  }

  private void checkVessel(String path, String field, String vessel) {
    if (drawing.vessel(vessel).isEmpty() && !drawing.unread().contains(vessel)) {
      findings.error(
          "", path + "." + field, "'" + vessel + "' is no vessel", field + " names a vessel");
    }
  }
}
