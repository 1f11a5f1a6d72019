/**
 * Print: a page cut to one boat, as XHTML for the screen, as plain text for the terminal and as PDF
 * for paper.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>cut a page with a {@link limberboard.print.cut.PageCutter}, for a boat or for none: the
 *       result is a {@link limberboard.print.page.CutPage};
 *   <li>render it with {@link limberboard.print.xhtml.Xhtml} or {@link
 *       limberboard.print.text.PlainText};
 *   <li>write the XHTML as A4 with {@link limberboard.print.pdf.Pdf}, or show it in a window with
 *       {@link limberboard.print.pdf.ClosedUserAgent} and {@link
 *       limberboard.print.picture.ScreenPictures}.
 * </ol>
 *
 * <p>A trace becomes a {@link limberboard.print.page.CutPage} too, with {@link
 * limberboard.print.sheet.TraceSheet}, and so comes out of every renderer; so does the whole
 * strategy for a fault, with {@link limberboard.print.drawing.TreeSheet}. {@link
 * limberboard.print.drawing.TreeDrawing} draws it as one SVG, and {@link
 * limberboard.print.drawing.TreeText} indents it for a terminal.
 *
 * <p><b>Choices made.</b> Markdown is read into small records of our own ({@link
 * limberboard.print.page.Block}, {@link limberboard.print.page.Inline}) while it is cut, and this
 * is where everything that must hold for every output is decided once: HTML becomes text, links
 * become page links or plain text, pictures from outside the workspace become their description,
 * and nesting has a limit. The renderers only write what they are given, so they cannot disagree.
 * What a licensed person does is left out in the cutting, and so can turn up in no output. Cautions
 * are collected before anything is cut away, and come first. See {@code
 * docs/decisions/0004-one-rendering-path.md}.
 *
 * <p>Nothing here opens a network connection, and pictures are read only from the workspace's
 * articles.
 *
 * <p><b>Threads.</b> Everything is immutable and may be used from any thread; rendering is best
 * done off the event thread.
 */
package limberboard.print;
