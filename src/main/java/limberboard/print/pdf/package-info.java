/**
 * A page as PDF on A4.
 *
 * <p>To use it: make a {@link limberboard.print.pdf.Pdf} with the workspace's pictures, and give it
 * pages; a picture that is not there is a framed note.
 *
 * <pre>{@code
 * import java.nio.charset.StandardCharsets;
 * import java.util.List;
 * import limberboard.library.page.Kind;
 * import limberboard.print.page.*;
 * import limberboard.print.pdf.Pdf;
 * import limberboard.print.picture.Pictures;
 *
 * var picture = new Inline.Picture("articles/pictures/shaft.svg", "the shaft"); // not there
 * var body = new Part(Part.Role.BODY, "", List.of(new Block.Paragraph(List.of(picture))));
 * var page = new CutPage("shaft", Kind.TOPIC, "Topic", "The shaft", "", "", List.of(body));
 * byte[] pdf = new Pdf(Pictures.none()).of(page);
 * assert new String(pdf, StandardCharsets.ISO_8859_1).startsWith("%PDF-");
 * }</pre>
 *
 * <p><b>Choices made.</b> The renderer may open nothing: its user agent knows the workspace's
 * pictures and no more. What cannot be laid out is an {@link java.io.IOException}.
 *
 * <p><b>Threads.</b> Any thread.
 */
package limberboard.print.pdf;
