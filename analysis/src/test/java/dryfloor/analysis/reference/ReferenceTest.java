package dryfloor.analysis.reference;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ArgumentsSource;

/** Each row of the table, one line of the report, for the laws of one family. */
abstract sealed class ReferenceTest
    permits WaterReferenceTest,
        FrictionReferenceTest,
        PipeReferenceTest,
        PumpReferenceTest,
        HoleReferenceTest,
        EmptyingReferenceTest,
        WeirReferenceTest,
        DrainReferenceTest,
        SiphonReferenceTest,
        NetworkReferenceTest {

  @ParameterizedTest(name = "{0}")
  @ArgumentsSource(RowsOfLaws.class)
  void agreesWithWhatOthersPublished(ReferenceValue published) {
    published.holds();
  }
}
