package limberboard.trace;

/**
 * Signs that two things are wrong at once.
 *
 * @param text what speaks for it and how the trace goes on, in sentences
 * @param chance how likely a second fault is, 0 to 1
 */
public record SecondFault(String text, double chance) {}
