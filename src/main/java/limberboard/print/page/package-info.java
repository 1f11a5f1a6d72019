/**
 * A page as data: {@link limberboard.print.page.CutPage}, its {@link limberboard.print.page.Part
 * parts}, {@link limberboard.print.page.Block blocks} and {@link limberboard.print.page.Inline runs
 * of text}. What cuts makes it, and what renders writes it.
 *
 * <p><b>Choices made.</b> Blocks and runs are sealed: a new one has to be told to every renderer.
 */
package limberboard.print.page;
