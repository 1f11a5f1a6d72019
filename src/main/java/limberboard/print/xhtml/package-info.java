/**
 * A page as XHTML with one style sheet for window and paper.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.page.Kind;
 * import limberboard.print.page.*;
 * import limberboard.print.picture.*;
 * import limberboard.print.xhtml.Xhtml;
 *
 * var text = Block.Paragraph.of("Less than 5 < 6 turns.");
 * var body = new Part(Part.Role.BODY, "What to do", List.of(text));
 * var page = new CutPage("shaft", Kind.TOPIC, "Topic", "The shaft", "", "", List.of(body));
 * String rendered = new Xhtml(Pictures.none()).render(page, Look.PAPER);
 * assert rendered.contains("<h1") && rendered.contains("5 &lt; 6");
 * }</pre>
 *
 * <p><b>Choices made.</b> Only this room knows tags and classes; {@code page.css} lies beside it.
 *
 * <p><b>Threads.</b> Immutable; any thread.
 */
package limberboard.print.xhtml;
