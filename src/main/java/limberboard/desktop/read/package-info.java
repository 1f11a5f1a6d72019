/**
 * Pages on the screen and on their way out: XHTML laid out by Flying Saucer in a column of readable
 * width, selected, copied, searched, printed and saved.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>render a page off the event thread with {@link limberboard.desktop.read.PageRenderer};
 *   <li>show the result in a {@link limberboard.desktop.read.ReadingPane};
 *   <li>say what a link does;
 *   <li>print and save with {@link limberboard.desktop.read.Papers}.
 * </ol>
 *
 * <pre>{@code
 * import java.util.*;
 * import limberboard.desktop.read.*;
 * import limberboard.library.page.Kind;
 * import limberboard.print.page.*;
 * import limberboard.print.picture.Pictures;
 *
 * var text = Block.Paragraph.of("Turn the shaft by hand.");
 * var body = new Part(Part.Role.BODY, "What to do", List.of(text));
 * var page = new CutPage("shaft", Kind.TOPIC, "Topic", "The shaft", "", "", List.of(body));
 * var renderer = new PageRenderer(Pictures.none());
 * Rendered rendered = renderer.screen(page, false, ScreenStyle.now(125));
 * assert rendered
 *     .document()
 *     .getElementsByTagName("h1")
 *     .item(0)
 *     .getTextContent()
 *     .equals("The shaft");
 * assert rendered.spoken().contains("Turn the shaft by hand.");
 * }</pre>
 *
 * <p><b>Choices made.</b> Parsing, reading pictures and laying out happen off the event thread;
 * only painting stays on it. What has been laid out carries its text with the place of each letter,
 * and selecting, copying, finding and listening all go by it: see {@code
 * docs/decisions/0018-reading.md}. The user agent that Flying Saucer asks for resources knows none,
 * so a page can reach neither network nor files. SVG is painted as vectors, sharp at every scale.
 *
 * <p><b>Threads.</b> {@link limberboard.desktop.read.PageRenderer} may be used from any thread;
 * panes belong to the event thread.
 */
package limberboard.desktop.read;
