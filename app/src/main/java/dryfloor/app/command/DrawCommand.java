package dryfloor.app.command;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.SvgWriter;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Ink;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.TellReport;
import dryfloor.model.Installation;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the building with its water before and after. */
@Command(
    name = "draw",
    description = "Draw the building to scale, with the water before and after a failure.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: as of 'tell'.",
      "",
      "Examples:",
      "  dryfloor draw shop.json             normal operation, to shop.normal.svg",
      "  dryfloor draw shop.json power-lost.building -o picture.svg",
      "  dryfloor draw shop.json normal -o - to the standard output"
    })
public final class DrawCommand implements Callable<Integer> {

  private static final String STANDARD_OUTPUT = "-";

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FAILURE",
      description = "Id of a failure or any part of it that fits only one. Default: normal.")
  private String failure = Question.NORMAL;

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Where to write the SVG. Default: beside you, named after drawing and failure.")
  private Optional<String> output = Optional.empty();

  /** A command at this workplace. */
  public DrawCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    Question question = new Question(workplace);
    return switch (question.ask(file, List.of(failure), options)) {
      case Question.Reply.Refused refused -> question.refuse(file, refused).number();
      case Question.Reply.Normal normal ->
          draw(
                  normal.installation(),
                  SceneWords.ofNormal(
                      options.wording(normal.installation()),
                      "Normal operation",
                      List.of(),
                      normal.outcome()),
                  "normal",
                  normal.outcome())
              .number();
      case Question.Reply.Failed failed -> draw(failed).number();
    };
  }

  private ExitCode draw(Question.Reply.Failed failed) {
    Installation installation = failed.installation();
    return switch (failed.result()) {
      case FailureResult.Answered answered ->
          draw(
              installation,
              SceneWords.of(
                  options.wording(installation),
                  FailureNames.name(answered.failure(), installation),
                  FailureTraits.components(answered.failure()),
                  answered.outcome()),
              FailureNames.id(answered.failure()),
              answered.outcome());
      case FailureResult.Unanswered unanswered ->
          without(
              failed,
              TellReport.withoutAnswer(
                  Question.title(failed),
                  unanswered.reason(),
                  options.wording(installation),
                  errInk()));
      case FailureResult.Skipped skipped ->
          without(
              failed,
              TellReport.skipped(
                  Question.title(failed),
                  skipped.reason(),
                  options.wording(installation),
                  errInk()));
    };
  }

  private ExitCode without(Question.Reply.Failed failed, String report) {
    workplace.surface().complain(report);
    return ExitCode.of(Answer.of(failed.result()));
  }

  private Ink errInk() {
    return workplace.surface().errInk();
  }

  private ExitCode draw(Installation installation, Scene scene, String id, Outcome outcome) {
    String svg = SvgWriter.write(Elevation.of(Plan.of(installation), scene));
    return write(svg, id) ? ExitCode.of(Answer.of(outcome)) : ExitCode.BAD_INPUT;
  }

  private boolean write(String svg, String id) {
    if (output.equals(Optional.of(STANDARD_OUTPUT))) {
      workplace.surface().answer(svg);
      return true;
    }
    Path target = Path.of(output.orElseGet(() -> defaultName(id)));
    try {
      WriteComplaint.refuseFolder(target);
      if (Files.exists(target) && Files.isSameFile(target, file)) {
        workplace
            .surface()
            .complain(
                "dryfloor: " + VisibleText.of(target.toString()) + " is the drawing itself\n");
        return false;
      }
      Files.writeString(target, svg);
    } catch (IOException e) {
      workplace
          .surface()
          .complain(
              "dryfloor: "
                  + VisibleText.of(target.toString())
                  + " can't be written: "
                  + WriteComplaint.of(e)
                  + "\n");
      return false;
    }
    workplace.surface().answer(VisibleText.of(target.toString()) + " written\n");
    return true;
  }

  private String defaultName(String id) {
    String name = String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
    return name + "." + id + ".svg";
  }
}
