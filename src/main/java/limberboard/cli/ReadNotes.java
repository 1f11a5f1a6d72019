package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.findings.FullReading;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.words.CountWords;

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
    FullReading reading = new FullReading(folders, page.path());
    return reading.note(session.today(), by) instanceof FullReading.Refused refused
        ? Optional.of(refused.why())
        : Optional.empty();
  }
}
