/**
 * What is due, by urgency, and the form that marks it done.
 *
 * <p><b>Choices made.</b> What is half typed is kept for each boat.
 */
package limberboard.desktop.upkeep.due;
