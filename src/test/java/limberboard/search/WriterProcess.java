package limberboard.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.library.Library;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.page.Topic;

/** Changes pages of an index for ever, and tells each commit on its standard output. */
final class WriterProcess {
  /** How many pages are changed by every commit. */
  static final int PAGES = 10;

  private WriterProcess() {}

  /**
   * Writes until it is killed.
   *
   * @param args the workspace
   */
  public static void main(String[] args) throws IOException {
    SmallSearchWorkspace workspace = new SmallSearchWorkspace(Path.of(args[0]));
    List<Page<?>> kept = List.copyOf(workspace.library().pages());
    try (SearchIndex index = SearchIndex.open(workspace.folders())) {
      for (int round = 0; round < Integer.MAX_VALUE; round++) {
        List<Page<?>> pages = new ArrayList<>(kept);
        for (int i = 0; i < PAGES; i++) {
          pages.add(page("loop-" + i, "In round r" + round + "r."));
        }
        if (index.update(new Library(pages, Map.of(), List.of())).inMemory().isPresent()) {
          throw new IOException("the index could not be written");
        }
        System.out.println(round);
      }
    }
  }

  private static Page<Topic> page(String id, String body) {
    Head head = new Head("Loop", null, null, null, null, null, null, null);
    return new Page<>(id, "articles/topics/" + id + ".md", head, new Topic(), body, 4);
  }
}
