package limberboard.trace;

/**
 * Something that can be done next.
 *
 * @param step the step
 * @param expectedMinutes what everything costs on average when this is done next, until the fault
 *     is mended or handed to the yard
 */
public record Alternative(NextStep step, double expectedMinutes) {}
