package limberboard.letters.inbox;

import java.time.Instant;

/**
 * A letter in the folder, as the folder tells of it.
 *
 * @param name its file name
 * @param bytes how long it is
 * @param changed when it was last written
 * @param noted whether something is noted of it
 */
public record LetterFile(String name, long bytes, Instant changed, boolean noted) {}
