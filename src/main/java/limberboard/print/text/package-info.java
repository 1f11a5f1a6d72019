/**
 * A page as plain text for a terminal.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.page.Kind;
 * import limberboard.print.page.*;
 * import limberboard.print.text.PlainText;
 *
 * var text = Block.Paragraph.of("Turn the shaft by hand and listen at each end of it.");
 * var body = new Part(Part.Role.BODY, "What to do", List.of(text));
 * var page = new CutPage("shaft", Kind.TOPIC, "Topic", "The shaft", "", "", List.of(body));
 * String rendered = new PlainText().render(page, 40);
 * assert rendered.contains("Turn the shaft by hand");
 * assert rendered.lines().allMatch(line -> line.length() <= 40) : rendered;
 * }</pre>
 *
 * <p><b>Choices made.</b> Lines are broken by counting characters, as a terminal does.
 *
 * <p><b>Threads.</b> {@link limberboard.print.text.PlainText} may be used from any thread; {@link
 * limberboard.print.text.TextLines} is for one page.
 */
package limberboard.print.text;
