package dryfloor.app.command;

import dryfloor.app.paper.Papers;
import picocli.CommandLine.Command;

/** What all the commands belong to; asked alone it shows its help. */
@Command(
    name = "dryfloor",
    version = DryfloorCommand.PROGRAM,
    mixinStandardHelpOptions = true,
    description = {
      "When one thing fails, where does the water end up, and does the floor stay dry?"
    },
    footer = {
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the input is wrong,",
      "3 there is no answer.",
      "",
      "Examples:",
      "  dryfloor new -o shop.json                    write a drawing to begin with",
      "  dryfloor check shop.json                     every failure, worst first",
      "  dryfloor tell shop.json power-lost.building  one failure in full",
      "  dryfloor pairs shop.json                     two failures that wet a floor",
      "  dryfloor sets shop.json                      the same, up to three at once",
      "  dryfloor limits shop.json --of sump          how high, how low, how big",
      "  dryfloor away shop.json 3d 14d               the worst while nobody is there",
      "  dryfloor bands shop.json                     how bad, how good, by tolerances",
      "  dryfloor warnings shop.json                  what rules and practice say",
      "  dryfloor draw shop.json power-lost.building  a picture, before and after",
      "  dryfloor report shop.json                    papers for owner and insurer",
      "  dryfloor compare old.json new.json           what ends better, worse, the same",
      "  dryfloor view shop.json                      the same in a window",
      "",
      "NO_COLOR=1 turns colours off; DRYFLOOR_MEMORY=1g lets it take so much memory",
      "(256m without);",
      "DRYFLOOR_TRACE=1 shows where in the program an error arose."
    })
public final class DryfloorCommand {

  /** Name and version. */
  static final String PROGRAM = Papers.PROGRAM;
}
