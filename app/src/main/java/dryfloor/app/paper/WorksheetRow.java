package dryfloor.app.paper;

import java.util.List;

/**
 * A line of the failure-mode worksheet, in the terms of IEC 60812.
 *
 * @param id of the failure
 * @param severity its step, or that there is no answer
 * @param item that fails
 * @param function what it is there for
 * @param mode in which it fails
 * @param cause that is usual
 * @param localEffect what happens at once
 * @param finalEffect where the water ends up
 * @param occurrence how often it happens: left to the user
 * @param detection how it shows, or that it does not
 * @param control what acted against it in the computed course
 * @param action that is recommended
 */
public record WorksheetRow(
    String id,
    String severity,
    String item,
    String function,
    String mode,
    String cause,
    String localEffect,
    String finalEffect,
    String occurrence,
    String detection,
    String control,
    String action) {

  /** Heads of the columns. */
  public static final List<String> COLUMNS =
      List.of(
          "Severity",
          "Item",
          "Function",
          "Failure mode",
          "Cause",
          "Local effect",
          "Final effect",
          "Occurrence",
          "Detection",
          "Present control",
          "Recommended action",
          "Failure id");

  /** The cells, one for each column. */
  public List<String> cells() {
    return List.of(
        severity,
        item,
        function,
        mode,
        cause,
        localEffect,
        finalEffect,
        occurrence,
        detection,
        control,
        action,
        id);
  }
}
