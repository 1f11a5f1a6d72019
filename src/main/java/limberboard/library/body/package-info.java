/**
 * The Markdown of a page as far as the library looks at it: parsing within limits, links, headings
 * and plain words. Showing it is the work of {@code print}.
 *
 * <p>To use it: ask {@link limberboard.library.body.BodyLimits} whether the text can be parsed at
 * all, parse it with {@link limberboard.library.body.Markdown}, and take from the document what a
 * check or the search wants with {@link limberboard.library.body.BodyScan}, {@link
 * limberboard.library.body.PlainWords} or, the cautions that a page quotes, {@link
 * limberboard.library.body.QuotedCautions}.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.body.*;
 *
 * String text = "# Bends\n\nA [sheet bend](sheet-bend.md) joins *two* ropes.";
 * assert BodyLimits.ofText(text).isEmpty();
 * var document = Markdown.parse(text);
 * assert BodyScan.of(document, 10)
 *     .links()
 *     .equals(List.of(new BodyScan.Spot("sheet-bend.md", 12)));
 * assert PlainWords.of(document).contains("joins two ropes");
 * }</pre>
 *
 * <p><b>Choices made.</b> Limits are asked before anything slow is done, see {@code
 * docs/decisions/0015-bounds.md}. Lines are counted as in the file, so that a problem is found
 * where it stands.
 *
 * <p><b>Threads.</b> Everything is stateless or immutable, and a parsed document is only read.
 */
package limberboard.library.body;
