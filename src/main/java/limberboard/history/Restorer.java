package limberboard.history;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import limberboard.library.file.SharedTextFile;
import limberboard.library.problem.Problem;

/**
 * Brings an earlier version of a page back as a new change. What stands in the file is recorded
 * first if it is not, so that nothing is lost.
 */
public final class Restorer {
  private static final int LARGEST = 20_000_000;

  private final HistoryFolder place;
  private final PageHistory history;
  private final Recorder recorder;

  /** Brings back pages of this workspace. */
  public Restorer(HistoryFolder place) {
    this.place = place;
    this.history = new PageHistory(place);
    this.recorder = new Recorder(place);
  }

  /**
   * What came of it.
   *
   * @param path the page's file within the workspace
   * @param kept the version in which what stood in the file was recorded first; empty when it was
   *     recorded already
   * @param now the new version; empty when the page stood so already
   */
  public record Restored(String path, Optional<String> kept, Optional<String> now) {}

  /**
   * Writes the text of an earlier version into the page's file and records that.
   *
   * @param path the page's path within the workspace
   * @param version the version
   * @throws HistoryTrouble when the page was not there in that version, or cannot be written; the
   *     file is then as it was
   */
  public Restored restore(String path, Version version, Author author) throws IOException {
    place.mustBeAtRest();
    Optional<String> text = history.text(version);
    if (text.isEmpty()) {
      throw new HistoryTrouble(
          "the page was not there in version " + version.shortId(), "choose an earlier version");
    }
    String inRepository = place.inRepository(path);
    boolean changed = recorder.unrecorded().contains(inRepository);
    Optional<String> kept =
        changed
            ? recorder.record(
                List.of(inRepository), "As it stood before restoring " + name(path), author)
            : Optional.empty();
    Optional<String> expected = history.now(path);
    if (expected.equals(text)) {
      return new Restored(path, kept, Optional.empty());
    }
    write(path, expected, text.get());
    return new Restored(
        path, kept, recorder.record(List.of(inRepository), said(path, version.when()), author));
  }

  private void write(String path, Optional<String> expected, String text) throws IOException {
    Path file = place.folders().root().resolve(path);
    Files.createDirectories(file.getParent());
    Optional<Problem> refused =
        new SharedTextFile(place.folders(), file, LARGEST)
            .change(
                now ->
                    now.equals(expected)
                        ? SharedTextFile.Rewrite.write(Optional.of(text), Optional.empty())
                        : SharedTextFile.Rewrite.leave(
                            Optional.of(
                                Problem.error(
                                    path, 0, "", "was changed at this moment", "try again"))),
                Optional::of);
    if (refused.isPresent()) {
      throw new HistoryTrouble(path + " " + refused.get().wrong(), refused.get().right());
    }
  }

  private static String said(String path, ZonedDateTime when) {
    return "Restore " + name(path) + " as it was on " + when.toLocalDate();
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
  }
}
