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
 *   <li>or write it as A4 with {@link limberboard.print.pdf.Pdf}; the window shows the XHTML with
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
 * <pre>{@code
 * import java.nio.charset.StandardCharsets;
 * import java.nio.file.Path;
 * import java.util.Optional;
 * import limberboard.library.LibraryReader;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.print.cut.PageCutter;
 * import limberboard.print.page.CutPage;
 * import limberboard.print.pdf.Pdf;
 * import limberboard.print.picture.Pictures;
 * import limberboard.print.text.PlainText;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var library = new LibraryReader(folders).read();
 * var page = library.page("butyl-tape").orElseThrow();
 * CutPage cut = new PageCutter(library).cut(page, Optional.empty()); // for no boat in particular
 * assert new PlainText().render(cut, 80).contains(page.title());
 * byte[] paper = new Pdf(Pictures.in(folders)).of(cut);
 * assert new String(paper, StandardCharsets.ISO_8859_1).startsWith("%PDF-");
 * }</pre>
 *
 * <p><b>Choices made.</b> Markdown is read into small records of our own ({@link
 * limberboard.print.page.Block}, {@link limberboard.print.page.Inline}) while a page is cut, and
 * everything that must hold for every output is decided there once ({@code markdown}, {@code cut}).
 * The renderers only write what they are given, so they cannot disagree. See {@code
 * docs/decisions/0004-one-rendering-path.md}.
 *
 * <p>Nothing here opens a network connection, and pictures are read only from the workspace's
 * articles.
 *
 * <p><b>Threads.</b> Everything is immutable and may be used from any thread; rendering is best
 * done off the event thread.
 */
package limberboard.print;
