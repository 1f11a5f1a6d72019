/**
 * Two people's changes of one text brought together: by header key, by paragraph, by line; what
 * both changed differently is a {@link limberboard.sharing.merge.Conflict} for a person to settle,
 * and never a mark in a page.
 *
 * <p>To use it: have {@link limberboard.sharing.merge.FileMerge} merge a file by its kind, and ask
 * the {@link limberboard.sharing.merge.MergedText} for its conflicts, and for the text once each is
 * chosen.
 *
 * <pre>{@code
 * import limberboard.sharing.merge.*;
 *
 * String base = "---\ntitle: Bends\nminutes: 5\n---\nTie it.\n\nPull it.\n";
 * String ours = base.replace("minutes: 5", "minutes: 8").replace("Pull it", "Pull it hard");
 * String theirs = base.replace("Bends", "Knots").replace("Pull it", "Pull it gently");
 * MergedText merged = FileMerge.of("articles/topics/bends.md", base, ours, theirs);
 * assert merged.conflicts().size() == 1;
 * assert merged.conflicts().get(0).theirs().equals("Pull it gently.\n");
 * String text = merged.text(conflict -> Choice.THEIRS);
 * assert text.equals("---\ntitle: Knots\nminutes: 8\n---\nTie it.\n\nPull it gently.\n") : text;
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0046-sharing.md}: keys by name, paragraphs by
 * place, lines within them only where nothing touches; tables by their rows. Nothing here knows
 * files or repositories.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.sharing.merge;
