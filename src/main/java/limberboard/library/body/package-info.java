/**
 * The Markdown of a page as far as the library looks at it: parsing within limits, links, headings
 * and plain words. Showing it is the work of {@code print}.
 *
 * <p>To use it: ask {@link limberboard.library.body.BodyLimits} whether the text can be parsed at
 * all, parse it with {@link limberboard.library.body.Markdown}, and take from the document what a
 * check or the search wants with {@link limberboard.library.body.BodyScan}, {@link
 * limberboard.library.body.PlainWords} or, the cautions that a page quotes, {@link
 * limberboard.library.body.QuotedCautions}, or {@link limberboard.library.body.FigureQuote}.
 *
 * <pre>{@code
 * import java.util.List;
 * import java.util.Optional;
 * import limberboard.library.body.*;
 *
 * String text = "# Bends\n\nA [sheet bend](sheet-bend.md) joins *two* ropes.";
 * assert BodyLimits.ofText(text).isEmpty();
 * var document = Markdown.parse(text);
 * assert BodyScan.of(document, 10)
 *     .links()
 *     .equals(List.of(new BodyScan.Spot("sheet-bend.md", 12)));
 * assert PlainWords.of(document).contains("joins two ropes");
 *
 * String waiting = "Wait [24 h](glue.md#sets).";
 * var quotes = FigureQuote.inBody(Markdown.parse(waiting), waiting);
 * assert quotes.get(0).name().equals("sets") && quotes.get(0).written().equals("24 h");
 * String now = FigureQuote.rewritten(waiting, quotes, quote -> Optional.of("36 h"));
 * assert now.equals("Wait [36 h](glue.md#sets).");
 * }</pre>
 *
 * <p><b>Choices made.</b> Limits are asked before anything slow is done, see {@code
 * docs/decisions/0015-bounds.md}. Lines are counted as in the file, so that a problem is found
 * where it stands.
 *
 * <p><b>Threads.</b> Everything is stateless or immutable, and a parsed document is only read.
 */
package limberboard.library.body;
