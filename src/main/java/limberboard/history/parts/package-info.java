/**
 * A page as parts: the keys of its header and the paragraphs of its body; and how two texts of it
 * differ, in those parts.
 *
 * <p>To use it: take a text apart with {@link limberboard.history.parts.TextParts}, or ask {@link
 * limberboard.history.parts.PartChanges} what changed from one text to another.
 *
 * <pre>{@code
 * import limberboard.history.parts.*;
 *
 * String before = "---\ntitle: Bends\nminutes: 5\n---\n# Use\n\nTie it.\n\nPull it.\n";
 * TextParts parts = TextParts.ofPage(before);
 * assert parts.key("minutes").orElseThrow().equals("minutes: 5\n");
 * assert parts.body().contains("Tie it.\n") && parts.text().equals(before);
 *
 * String after = before.replace("5", "10").replace("Pull", "Pull hard on");
 * var changes = PartChanges.between(TextParts.ofPage(before), TextParts.ofPage(after));
 * assert changes.toString().equals("[minutes: 5 → 10, changed below “Use”]") : changes;
 * }</pre>
 *
 * <p><b>Choices made.</b> Parts are cut out of the text and never written anew: put together again
 * they are the text to the letter. A header that cannot be read as keys on lines of their own is
 * one part. See {@code docs/decisions/0046-sharing.md}.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.history.parts;
