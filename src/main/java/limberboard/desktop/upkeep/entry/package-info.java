/**
 * Entries of a log: the form that is filled, the log that is written, and steps that go back and
 * forth.
 *
 * <p><b>Choices made.</b> Written by the backgrounds, to the letter undone. See {@code
 * docs/decisions/0019-log-steps-and-days.md}.
 */
package limberboard.desktop.upkeep.entry;
