package limberboard.trace;

import limberboard.words.ChanceWords;

/**
 * A cause with its chance.
 *
 * @param cause the cause
 * @param chance its chance now, 0 to 1
 * @param before its chance without the last answer, 0 to 1
 * @param word the chance in words for a list, see {@link ChanceWords#listed}
 */
public record RankedCause(FaultCause cause, double chance, double before, String word) {}
