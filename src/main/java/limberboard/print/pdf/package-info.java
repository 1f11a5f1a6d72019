/**
 * XHTML as A4.
 *
 * <p><b>Choices made.</b> The renderer may open nothing: its user agent knows the workspace's
 * pictures and no more.
 */
package limberboard.print.pdf;
