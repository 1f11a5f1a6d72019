package limberboard.history;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.WorkspaceFolders;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;

/** Begins the history of a workspace that has none. */
public final class Beginning {
  private static final List<String> NEVER_RECORDED =
      List.of(
          "index/lucene/",
          "/index/searches",
          "**/letters/senders",
          "drills/students/",
          ".import/",
          ".*.lock",
          ".*.tmp");

  private Beginning() {}

  /**
   * Makes a repository in the workspace's folder and records all that is there as its first
   * version. What is built, or of one desk alone, is named in {@code .gitignore}; lines that are
   * there stay.
   *
   * @param author who begins it
   * @return how many files were recorded
   * @throws HistoryTrouble when the workspace has a history already
   */
  public static int begin(WorkspaceFolders folders, Author author) throws IOException {
    return begin(folders, author, Clock.systemDefaultZone());
  }

  /** The same by a clock that says when. */
  public static int begin(WorkspaceFolders folders, Author author, Clock clock) throws IOException {
    try (HistoryFolder there = HistoryFolder.of(folders).orElse(null)) {
      if (there != null) {
        throw new HistoryTrouble(
            folders.root() + " has a history already, in " + there.repository().getDirectory(),
            "limberboard history PAGE shows it");
      }
    }
    ignore(folders.root().resolve(".gitignore"));
    try (Git git =
        Git.init().setDirectory(folders.root().toFile()).setInitialBranch("main").call()) {
      git.getRepository().getConfig().setBoolean("core", null, "symlinks", false);
      git.getRepository().getConfig().save();
    } catch (GitAPIException e) {
      throw new IOException("the history could not be begun: " + e.getMessage(), e);
    }
    try (HistoryFolder begun = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(begun, clock);
      List<String> files = recorder.unrecorded();
      recorder.record(files, "Begin the history", author);
      return files.size();
    }
  }

  private static void ignore(Path file) throws IOException {
    String now = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
    List<String> known = now.lines().map(String::strip).toList();
    StringBuilder text = new StringBuilder(now);
    if (!now.isEmpty() && !now.endsWith("\n")) {
      text.append('\n');
    }
    NEVER_RECORDED.stream()
        .filter(line -> !known.contains(line))
        .forEach(line -> text.append(line).append('\n'));
    SafeFiles.write(file, text.toString());
  }
}
