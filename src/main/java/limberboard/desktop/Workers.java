package limberboard.desktop;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** The threads for slow work: the only place where the window makes any. */
final class Workers implements AutoCloseable {
  private static final long LONGEST_SECONDS = 10;
  private final ExecutorService library = one("library");
  private final ExecutorService search = one("search");
  private final ExecutorService pages = one("pages");
  private final ExecutorService trees = one("trees");
  private final ExecutorService letters = one("letters");
  private final ExecutorService drills = one("drills");
  private final ExecutorService versions = one("versions");
  private final ExecutorService findings = one("findings");
  private final ExecutorService written = one("written");

  private static ExecutorService one(String name) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, "limberboard-" + name);
          thread.setDaemon(true);
          return thread;
        });
  }

  /** Reads the workspace, builds the index, writes boats. */
  ExecutorService library() {
    return library;
  }

  /** Searches. */
  ExecutorService search() {
    return search;
  }

  /** Renders pages and drawings, weighs answers. */
  ExecutorService pages() {
    return pages;
  }

  /** Draws out whole trees, which takes longer than anybody would wait for an answer. */
  ExecutorService trees() {
    return trees;
  }

  /** Reads and recognises letters, in small steps, and drafts answers. */
  ExecutorService letters() {
    return letters;
  }

  /** Makes, plays and marks drills, gathers those of a class. */
  ExecutorService drills() {
    return drills;
  }

  /** Reads and records versions of pages, shares them with other copies. */
  ExecutorService versions() {
    return versions;
  }

  /** Looks for what is wrong in all pages: proofreads them, follows the plans of all symptoms. */
  ExecutorService findings() {
    return findings;
  }

  /** Proofreads the page that is written, and follows its plans. */
  ExecutorService written() {
    return written;
  }

  /** Takes no more work, and waits a while for what is still being written. */
  @Override
  public void close() {
    library.shutdown();
    search.shutdownNow();
    pages.shutdown();
    versions.shutdown();
    trees.shutdownNow();
    letters.shutdownNow();
    drills.shutdownNow();
    findings.shutdownNow();
    written.shutdownNow();
    try {
      if (!library.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        library.shutdownNow();
      }
      pages.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS);
      versions.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
