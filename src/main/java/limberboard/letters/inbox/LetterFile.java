package limberboard.letters.inbox;

import java.time.Instant;
import java.util.Optional;

/**
 * A letter in the folder, as the folder tells of it.
 *
 * @param name its file name
 * @param bytes how long it is
 * @param changed when it was last written
 * @param noted when what is noted of it was last written; empty while nothing is
 */
public record LetterFile(String name, long bytes, Instant changed, Optional<Instant> noted) {}
