/**
 * Markdown read into blocks. What must hold for every output is decided here once: HTML becomes
 * text, links become page links or plain text, pictures from outside become their description.
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0004-one-rendering-path.md}.
 */
package limberboard.print.markdown;
