/**
 * A page as plain text for a terminal.
 *
 * <p><b>Choices made.</b> Lines are broken by counting characters, as a terminal does.
 */
package limberboard.print.text;
