package dryfloor.analysis.generated;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * The build tries each property a few times, always the same ones. The system property {@code
 * dryfloor.tries} multiplies that, and {@code dryfloor.seed} begins somewhere else.
 */
public final class MoreTries implements AroundPropertyHook {

  private static final int TIMES = Integer.getInteger("dryfloor.tries", 1);
  private static final String SEED = System.getProperty("dryfloor.seed", "2026");

  /** A class that has this hook has it for each of its properties. */
  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    int tries = context.attributes().tries().orElse(1);
    context.attributes().setTries(tries * TIMES);
    context.attributes().setSeed(SEED);
    return property.execute();
  }
}
