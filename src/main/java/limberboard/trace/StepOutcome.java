package limberboard.trace;

import java.util.Optional;

/**
 * One way a step can turn out, and what the trace is then.
 *
 * @param finding what is found
 * @param chance how likely that is when the step is done, 0 to 1
 * @param then the trace afterwards; empty where it ends
 */
public record StepOutcome(Finding finding, double chance, Optional<Trace> then) {}
