package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Page;
import limberboard.proofread.mark.ReadMarks;
import limberboard.words.CountWords;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/**
 * Notes in headers that pages were read in full.
 *
 * @param session where it says what it has done
 * @param folders the workspace
 */
record ReadNotes(CommandContext session, WorkspaceFolders folders) {
  /** Notes it in each page; what cannot be written is said, and the others are. */
  int note(List<Page<?>> pages, String by) {
    int noted = 0;
    for (Page<?> page : pages) {
      Optional<String> refused = note(page, by);
      refused.ifPresent(why -> session.err().println(page.path() + ": " + why));
      noted += refused.isPresent() ? 0 : 1;
    }
    session.out().println("Noted in " + CountWords.of(noted, "page") + ".");
    return noted == pages.size() ? ExitCode.OK : ExitCode.IO;
  }

  private Optional<String> note(Page<?> page, String by) {
    PageFile file = new PageFile(folders, page.path());
    if (!(file.open() instanceof PageFile.Ready ready) || ready.page().isEmpty()) {
      return Optional.of("cannot be read");
    }
    PageText now = ready.page().get();
    try {
      PageText marked = now.withHeader(ReadMarks.marked(now.plain(), session.today(), by));
      SaveOutcome saved = file.save(ready.page(), marked);
      return saved instanceof SaveOutcome.Saved
          ? Optional.empty()
          : Optional.of("has changed meanwhile, or cannot be written; nothing was noted");
    } catch (Unchangeable e) {
      return Optional.of("its header cannot be written: " + e.getMessage());
    }
  }
}
