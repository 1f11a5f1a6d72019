package limberboard.desktop.workspace.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.HistoryFolder;
import limberboard.history.PageHistory;
import limberboard.history.Recorder;
import limberboard.history.Version;
import limberboard.library.file.WorkspaceFolders;

/**
 * The versions of a page as they were read. Immutable.
 *
 * @param path the page's file, relative to the workspace
 * @param entries its versions, the latest first
 * @param unrecorded whether the file holds what is in no version
 * @param recorder who records by Git's settings
 */
record PageVersions(
    String path, List<Entry> entries, boolean unrecorded, Optional<Author> recorder) {
  private static final int MOST_TOLD = 100;

  /** Copies the list. */
  PageVersions {
    entries = List.copyOf(entries);
  }

  /**
   * A version.
   *
   * @param version the version
   * @param changes what it changed, in words; empty for those long ago
   */
  record Entry(Version version, List<String> changes) {
    Entry {
      changes = List.copyOf(changes);
    }
  }

  /**
   * Reads them; not for the event thread.
   *
   * @param page the page's id or path
   * @return empty where the workspace has no history
   */
  static Optional<PageVersions> read(WorkspaceFolders folders, String page) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
      if (place == null) {
        return Optional.empty();
      }
      PageHistory history = new PageHistory(place);
      String path = history.find(page);
      List<Version> versions = history.of(path);
      List<Entry> entries = new ArrayList<>();
      for (int i = 0; i < versions.size(); i++) {
        entries.add(
            new Entry(versions.get(i), i < MOST_TOLD ? history.changes(versions, i) : List.of()));
      }
      Recorder recorder = new Recorder(place);
      boolean changed = recorder.unrecorded().contains(place.inRepository(path));
      return Optional.of(new PageVersions(path, entries, changed, recorder.author()));
    }
  }

  List<Version> versions() {
    return entries.stream().map(Entry::version).toList();
  }

  /** The version before one; empty of the first. */
  Optional<Version> before(Version version) {
    int at = versions().indexOf(version);
    return at >= 0 && at + 1 < entries.size()
        ? Optional.of(entries.get(at + 1).version())
        : Optional.empty();
  }
}
