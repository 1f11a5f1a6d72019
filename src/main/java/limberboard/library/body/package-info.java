/**
 * The Markdown of a page as far as the library looks at it: parsing within limits, links, headings
 * and plain words. Showing it is the work of {@code print}.
 *
 * <p><b>Choices made.</b> Limits are asked before anything slow is done, see {@code
 * docs/decisions/0015-bounds.md}.
 */
package limberboard.library.body;
