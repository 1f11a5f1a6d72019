package limberboard.desktop.write.state;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Delay;
import limberboard.desktop.base.Guard;
import limberboard.library.TypingReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;

/**
 * What the Write place touches outside the window.
 *
 * @param folders the workspace
 * @param readers makes readers of pages that are typed, on the thread that reads the library
 * @param library reads and writes files, off the event thread
 * @param looking looks at what is typed, off the event thread
 * @param proofs proofreads what is typed, off the event thread
 * @param pause waits for a pause in typing before the text is looked at
 * @param keeping waits for a pause in typing before the text is kept
 * @param texts keeps what is not saved
 * @param record records what is saved
 * @param pictures asks for pictures
 * @param clock tells when a text was kept
 * @param guard is told of work that must not run on the event thread
 */
public record WriteOutside(
    WorkspaceFolders folders,
    Readers readers,
    Background library,
    Background looking,
    Background proofs,
    Delay pause,
    Delay keeping,
    TextStore texts,
    PageRecord record,
    Supplier<List<Path>> pictures,
    Clock clock,
    Guard guard) {

  /** Makes readers of pages that are typed. */
  @FunctionalInterface
  public interface Readers {
    /**
     * A reader of one page against all others as they were last read.
     *
     * @param path of its file, relative to the workspace
     * @param kind what its folder holds
     */
    TypingReader of(String path, Kind kind);
  }
}
