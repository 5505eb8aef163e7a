package dryfloor.app.command;

import dryfloor.app.shipped.Template;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a drawing to begin with. */
@Command(
    name = "new",
    description = "Write a drawing to begin with.",
    mixinStandardHelpOptions = true,
    footer = {"", "Examples:", "  dryfloor new --list", "  dryfloor new cellar-sump -o shop.json"})
public final class NewCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(
      arity = "0..1",
      paramLabel = "TEMPLATE",
      description = "Which one; 'dryfloor new --list' lists them. Default: cellar-sump.")
  private String template = Template.CELLAR_SUMP.id();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Where to write it. Default: the template's name with .json.")
  private Optional<Path> output = Optional.empty();

  @Option(names = "--force", description = "Write over a file that is already there.")
  private boolean force;

  @Option(names = "--list", description = "List the templates and write nothing.")
  private boolean list;

  /** A command at this workplace. */
  public NewCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    if (list) {
      workplace.surface().answer(templates());
      return ExitCode.FLOOR_DRY.number();
    }
    return Template.find(template)
        .map(this::write)
        .orElseGet(
            () ->
                refuse(
                    "no template is called '"
                        + VisibleText.of(template)
                        + "'; there are\n"
                        + templates()))
        .number();
  }

  private ExitCode write(Template chosen) {
    Path file = output.orElse(Path.of(chosen.id() + ".json"));
    String name = VisibleText.of(file.toString());
    try {
      WriteComplaint.refuseFolder(file);
      if (force) {
        Files.write(file, chosen.content());
      } else {
        Files.write(
            file, chosen.content(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      }
    } catch (FileAlreadyExistsException e) {
      return refuse(name + " is already there; take another name or --force to write over it\n");
    } catch (IOException e) {
      return refuse(name + " can't be written: " + WriteComplaint.of(e) + "\n");
    }
    workplace
        .surface()
        .answer(name + " written; 'dryfloor check " + name + "' answers its failures\n");
    return ExitCode.FLOOR_DRY;
  }

  private ExitCode refuse(String complaint) {
    workplace.surface().complain("dryfloor: " + complaint);
    return ExitCode.BAD_INPUT;
  }

  private static String templates() {
    return Arrays.stream(Template.values())
        .map(each -> String.format("  %-14s %s\n", each.id(), each.description()))
        .collect(Collectors.joining());
  }
}
