package dryfloor.analysis.reference;

/** What a source says. */
sealed interface Published permits Published.Figure, Published.Range {

  /** How far a number lies from it, as a share of it; 0 inside a range. */
  double relativeDifference(double computed);

  /** Whether a number is what the source says, as far as it can be told. */
  boolean agreesWith(double computed);

  /** In words, without unit. */
  String words();

  /**
   * One number.
   *
   * @param value as printed
   * @param tolerance greatest difference that its rounding or its stated accuracy allows, in its
   *     unit
   */
  record Figure(double value, double tolerance) implements Published {

    @Override
    public double relativeDifference(double computed) {
      return computed / value - 1.0;
    }

    @Override
    public boolean agreesWith(double computed) {
      return Math.abs(computed - value) <= tolerance;
    }

    @Override
    public String words() {
      return String.valueOf(value);
    }
  }

  /** Two numbers between which sources differ. */
  record Range(double least, double most) implements Published {

    @Override
    public double relativeDifference(double computed) {
      return computed > most
          ? computed / most - 1.0
          : computed < least ? computed / least - 1.0 : 0.0;
    }

    @Override
    public boolean agreesWith(double computed) {
      return computed >= least && computed <= most;
    }

    @Override
    public String words() {
      return least + " to " + most;
    }
  }
}
