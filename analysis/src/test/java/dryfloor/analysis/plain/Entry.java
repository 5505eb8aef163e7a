package dryfloor.analysis.plain;

/** What the full comparison says about one failure. */
sealed interface Entry {

  String scenario();

  String failure();

  /** Both came to an end. */
  record Compared(Comparison comparison) implements Entry {
    @Override
    public String scenario() {
      return comparison.scenario();
    }

    @Override
    public String failure() {
      return comparison.failure();
    }
  }

  /** At least one of them has no answer. */
  record NotCompared(String scenario, String failure, Why why) implements Entry {}

  /** Why a failure was not compared. */
  enum Why {
    PLAIN_TAKES_TOO_LONG("the plain simulator was given up"),
    PLAIN_DOES_NOT_BALANCE("the plain simulator does not keep its water where pipes meet"),
    PLAIN_KNOWS_NO_SEQUENCE("the plain simulator knows no events after the first"),
    ENGINE_HAS_NO_ANSWER("the engine gives no answer");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }
}
