package limberboard.trace;

/**
 * One line of the trail, for people.
 *
 * @param step what was done
 * @param text the question, or the mend's title
 * @param answer the answer in words: "runs from screw", "can't tell", "made safe", "did not cure
 *     it"
 * @param changed what it changed when it was given, after everything above it
 */
public record TrailEntry(TrailStep step, String text, String answer, String changed) {}
