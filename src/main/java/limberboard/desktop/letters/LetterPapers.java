package limberboard.desktop.letters;

import java.io.IOException;
import java.util.List;
import limberboard.letters.answer.AttachedPages;
import limberboard.letters.inbox.YardAddress;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import limberboard.library.file.WorkspaceFolders;

/**
 * What goes with every answer that is saved: from whom it is, and pages. Not for the event thread.
 *
 * @param folders the workspace
 * @param paper lays out pages
 */
record LetterPapers(WorkspaceFolders folders, AttachedPages.Paper paper) {
  /** From whom answers are. */
  YardAddress from() {
    return YardAddress.read(folders);
  }

  /** Pages cut to the boat of a letter. */
  List<SentFile> pages(Understanding letter, List<String> ids) throws IOException {
    return new AttachedPages(letter.workspace().library(), paper).of(ids, letter.fitting());
  }
}
