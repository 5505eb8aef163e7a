package dryfloor.analysis.reference;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Hands a test the rows of its laws. */
final class RowsOfLaws implements ArgumentsProvider {

  @Override
  public Stream<? extends Arguments> provideArguments(
      ParameterDeclarations parameters, ExtensionContext context) {
    Laws laws = context.getRequiredTestClass().getAnnotation(Laws.class);
    return ReferenceTables.tables().ofLaws(Set.of(laws.value())).stream().map(Arguments::of);
  }
}
