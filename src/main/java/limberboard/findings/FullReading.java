package limberboard.findings;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.proofread.mark.ReadMarks;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/**
 * Notes in the header of a page's file that the page was read in full; all else stays to the
 * letter. Not for the event thread.
 *
 * @param folders the workspace
 * @param file the page's file, relative to the workspace
 */
public record FullReading(WorkspaceFolders folders, String file) {
  /** What came of it. */
  public sealed interface Outcome {}

  /**
   * It is noted.
   *
   * @param before what the file held
   * @param now what it holds
   */
  public record Noted(PageText before, PageText now) implements Outcome {}

  /**
   * Nothing was written.
   *
   * @param why in a clause
   */
  public record Refused(String why) implements Outcome {}

  /**
   * Notes it.
   *
   * @param on the day
   * @param by what kind of reader
   */
  public Outcome note(LocalDate on, String by) {
    PageFile page = new PageFile(folders, file);
    if (!(page.open() instanceof PageFile.Ready ready) || ready.page().isEmpty()) {
      return new Refused("cannot be read");
    }
    PageText before = ready.page().get();
    try {
      PageText plain = new PageText(before.plain());
      String header = ReadMarks.marked(plain.text(), on, by);
      PageText now = before.edited(plain.withHeader(header).text());
      return page.save(Optional.of(before), now) instanceof SaveOutcome.Saved
          ? new Noted(before, now)
          : new Refused("has changed meanwhile, or cannot be written; nothing was noted");
    } catch (Unchangeable e) {
      return new Refused("its header cannot be written: " + e.getMessage());
    }
  }

  /** Takes a note back; whether that was done, which is not where the file has changed since. */
  public boolean takeBack(Noted noted) {
    SaveOutcome outcome =
        new PageFile(folders, file).save(Optional.of(noted.now()), noted.before());
    return outcome instanceof SaveOutcome.Saved;
  }
}
