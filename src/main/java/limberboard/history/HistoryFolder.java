package limberboard.history;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.library.file.WorkspaceFolders;
import org.eclipse.jgit.errors.RepositoryNotFoundException;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.RepositoryState;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.util.FS;

/** A workspace and the Git repository that it is or lies in. To be closed. */
public final class HistoryFolder implements AutoCloseable {
  /** What of a workspace is recorded; the rest of the folder is somebody else's. */
  private static final List<String> RECORDED =
      List.of("articles/", "index/words/", "boats/", "demo-boats/", "drills/", ".gitignore");

  static {
    // how finely the disk keeps time is found out beside the work, which need not wait for it
    FS.FileStoreAttributes.setBackground(true);
  }

  private final WorkspaceFolders folders;
  private final Repository repository;
  private final String before;

  private HistoryFolder(WorkspaceFolders folders, Repository repository) throws IOException {
    this.folders = folders;
    this.repository = repository;
    Path within =
        repository.getWorkTree().toPath().toRealPath().relativize(folders.root().toRealPath());
    String path = within.toString().replace('\\', '/');
    this.before = path.isEmpty() ? "" : path + "/";
  }

  /**
   * The workspace's repository; empty when it lies in none.
   *
   * @throws HistoryTrouble when there is one that cannot be used
   */
  public static Optional<HistoryFolder> of(WorkspaceFolders folders) throws IOException {
    FileRepositoryBuilder builder =
        new FileRepositoryBuilder().findGitDir(folders.root().toFile()).setMustExist(true);
    if (builder.getGitDir() == null) {
      return Optional.empty();
    }
    try {
      Repository repository = builder.build();
      if (repository.isBare()) {
        repository.close();
        return Optional.empty();
      }
      return Optional.of(new HistoryFolder(folders, repository));
    } catch (RepositoryNotFoundException e) {
      throw new HistoryTrouble(
          builder.getGitDir() + " is no Git repository, or a broken one",
          "mend it with git, or move it away and begin a history anew");
    }
  }

  /** The workspace. */
  public WorkspaceFolders folders() {
    return folders;
  }

  /** The repository, for what shares it. */
  public Repository repository() {
    return repository;
  }

  /** A path within the repository, for one within the workspace. */
  public String inRepository(String path) {
    return before + path;
  }

  /** A path within the workspace, for one within the repository; as it is for what lies outside. */
  public String inWorkspace(String path) {
    return path.startsWith(before) ? path.substring(before.length()) : path;
  }

  /** Where a path within the repository lies on the disk. */
  public Path file(String path) {
    return repository.getWorkTree().toPath().resolve(path);
  }

  /** Whether a path within the repository is one that Limberboard records. */
  public boolean isRecorded(String path) {
    return path.startsWith(before)
        && RECORDED.stream().anyMatch(path.substring(before.length())::startsWith);
  }

  /** What is recorded, as paths within the repository. */
  List<String> recorded() {
    return RECORDED.stream()
        .map(path -> before + (path.endsWith("/") ? path.substring(0, path.length() - 1) : path))
        .toList();
  }

  /**
   * Refuses while git itself is in the middle of something.
   *
   * @throws HistoryTrouble when a merge or another work of git is not finished
   */
  public void mustBeAtRest() throws IOException {
    RepositoryState state = repository.getRepositoryState();
    if (state != RepositoryState.SAFE) {
      throw new HistoryTrouble(
          "something was begun here with git and is not finished (" + state.getDescription() + ")",
          "finish it or take it back with git; git status says how");
    }
  }

  @Override
  public void close() {
    repository.close();
  }
}
