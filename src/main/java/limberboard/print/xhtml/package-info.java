/**
 * A page as XHTML with one style sheet for window and paper.
 *
 * <p><b>Choices made.</b> Only this room knows tags and classes; {@code page.css} lies beside it.
 */
package limberboard.print.xhtml;
