package limberboard.fuzz;

import java.util.Random;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives every property another seed when asked to explore ({@code -Dexplore=true}, profile {@code
 * explore}): otherwise each has its own fixed one, so that a build tells the same each time. A
 * property that fails says its seed.
 */
public final class Exploring implements AroundPropertyHook {
  private static final boolean ASKED = Boolean.getBoolean("explore");
  private static final Random SEEDS = new Random();

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    if (ASKED) {
      context.attributes().setSeed(Long.toString(SEEDS.nextLong()));
    }
    return property.execute();
  }

  @Override
  public int aroundPropertyProximity() {
    return Integer.MIN_VALUE;
  }
}
