/**
 * Markdown read into blocks. What must hold for every output is decided here once: HTML becomes
 * text, links become page links or plain text, pictures from outside become their description.
 *
 * <p>To use it: say with {@link limberboard.print.markdown.LinkTargets} where a page lies and what
 * is a page, and let a {@link limberboard.print.markdown.MarkdownReader} read its body.
 *
 * <pre>{@code
 * import limberboard.print.markdown.*;
 * import limberboard.print.page.*;
 *
 * var reader = new MarkdownReader(new LinkTargets("articles/topics/knots.md", "bend"::equals));
 * var read = reader.read("See the [bend](bend.md), not <b>this</b>.");
 * Block.Paragraph paragraph = (Block.Paragraph) read.get(0).block();
 * assert paragraph.text().stream().anyMatch(Inline.PageLink.class::isInstance);
 * assert paragraph.text().toString().contains("<b>"); // shown as text, never obeyed
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0004-one-rendering-path.md}. Nesting has a
 * limit, beyond which text stays text.
 *
 * <p><b>Threads.</b> Everything is immutable; nothing is read from disk.
 */
package limberboard.print.markdown;
