/**
 * Saving a page so that nothing is lost: {@link limberboard.writing.save.PageFile} writes it whole
 * or not at all and never over what somebody else has written meanwhile; {@link
 * limberboard.writing.save.KeptTexts} keeps what is being typed until it is saved.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.Optional;
 * import limberboard.library.NewWorkspace;
 * import limberboard.writing.PageText;
 * import limberboard.writing.save.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * var file = new PageFile(folders, "articles/topics/bends.md");
 * var first = new PageText("---\ntitle: Bends\n---\n");
 * assert file.save(Optional.empty(), first) instanceof SaveOutcome.Saved;
 * Files.writeString(folders.articles().resolve("topics/bends.md"), "another's\n");
 * var mine = new PageText(first.text() + "More.\n");
 * var outcome = (SaveOutcome.Changed) file.save(Optional.of(first), mine);
 * assert outcome.theirs().orElseThrow().text().equals("another's\n");
 * assert !outcome.differences().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0044-writing-pages.md}: whether a file has
 * changed is told by what it holds and never by its time; kept texts lie in the person's own
 * folder.
 *
 * <p><b>Threads.</b> Any thread, not the event thread.
 */
package limberboard.writing.save;
