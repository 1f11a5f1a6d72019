package limberboard.proofread;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.mark.ReadingAge;

/**
 * Which pages of a workspace are to be read in full.
 *
 * @param folders where their files lie
 * @param words how long a reading holds, if the library says so
 * @param today the day it is
 */
public record FullReadings(WorkspaceFolders folders, TradeWords words, LocalDate today) {
  /** Whether and why a page is to be read. */
  public Optional<ReadingAge> due(Page<?> page) {
    Path file = folders.root().resolve(page.path());
    return ReadingAge.of(
        page,
        () -> TextFile.read(file, page.path()).text(),
        today,
        words.readAgain().orElse(ReadingAge.USUAL));
  }
}
