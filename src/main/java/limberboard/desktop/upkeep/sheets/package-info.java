/**
 * Sheets in the window: the list, the shopping and the rigging of a boat.
 *
 * <p><b>Choices made.</b> Worked out only while somebody looks at them.
 */
package limberboard.desktop.upkeep.sheets;
