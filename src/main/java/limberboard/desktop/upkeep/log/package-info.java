/**
 * The log of a boat: its lines, the form for a new or a corrected one, and the mend that a trace
 * writes.
 *
 * <p><b>Choices made.</b> Lines that cannot be read are shown with their reason and never dropped.
 */
package limberboard.desktop.upkeep.log;
