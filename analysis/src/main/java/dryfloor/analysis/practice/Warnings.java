package dryfloor.analysis.practice;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.model.Installation;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Holds a drawing against published rules and common practice. */
public final class Warnings {

  private Warnings() {}

  /**
   * Everything that a rule has against a drawing, by rule, then in the order of the drawing.
   *
   * @throws BaselineProblem if the installation spills or never settles when all is well
   */
  public static List<Warning> of(Installation drawing) throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(drawing, () -> false);
    return Stream.of(
            new SupplyRules(drawing).all(),
            new DrainRules(drawing).all(),
            new BasinRules(drawing, inquiry.undisturbed()).all(),
            new PowerRules(inquiry).all())
        .flatMap(warnings -> warnings)
        .sorted(Comparator.comparing(Warning::rule))
        .toList();
  }
}
