package limberboard.desktop.write.state;

import java.io.IOException;
import java.util.Collection;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;

/** Records saved pages in the workspace's history, where it has one; off the event thread. */
public interface PageRecord {
  /** There is no history. */
  PageRecord NONE =
      new PageRecord() {
        @Override
        public boolean isThere() {
          return false;
        }

        @Override
        public Optional<String> author() {
          return Optional.empty();
        }

        @Override
        public void record(Collection<String> paths, String said, String author) {
          // there is no history
        }
      };

  /**
   * Whether the workspace has a history.
   *
   * @throws IOException when there is one that cannot be used
   */
  boolean isThere() throws IOException;

  /**
   * Who records here, as the history's settings say.
   *
   * @throws IOException when they cannot be read
   */
  Optional<String> author() throws IOException;

  /**
   * Records files as they are now.
   *
   * @param paths relative to the workspace
   * @param said what to say about it
   * @param author who says so
   * @throws IOException when it cannot be recorded; what is wrong and right stand in its message
   */
  void record(Collection<String> paths, String said, String author) throws IOException;

  /** The history of a workspace. */
  static PageRecord of(WorkspaceFolders folders) {
    return new PageRecord() {
      @Override
      public boolean isThere() throws IOException {
        try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
          return place != null;
        }
      }

      @Override
      public Optional<String> author() throws IOException {
        try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
          return place == null
              ? Optional.empty()
              : new Recorder(place)
                  .author()
                  .map(
                      who ->
                          who.mail().isEmpty() ? who.name() : who.name() + " <" + who.mail() + ">");
        }
      }

      @Override
      public void record(Collection<String> paths, String said, String author) throws IOException {
        try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
          if (place == null) {
            throw new IOException("this workspace has no history yet");
          }
          Author who = Author.read(author).orElseThrow(() -> new IOException("nobody is named"));
          new Recorder(place).record(paths.stream().map(place::inRepository).toList(), said, who);
        }
      }
    };
  }
}
