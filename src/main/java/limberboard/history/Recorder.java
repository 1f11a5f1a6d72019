package limberboard.history;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jgit.api.AddCommand;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.Status;
import org.eclipse.jgit.api.StatusCommand;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.api.errors.JGitInternalException;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * Records changes of the workspace's files. Only the files named are recorded, whatever else is
 * changed or was made ready with git beside them; nothing is written but the repository's own
 * files, and no programs are run that a repository may name.
 */
public final class Recorder {
  private final HistoryFolder place;
  private final Repository repository;
  private final Clock clock;

  /** A recorder for this workspace. */
  public Recorder(HistoryFolder place) {
    this(place, Clock.systemDefaultZone());
  }

  /** A recorder that says when by this clock. */
  public Recorder(HistoryFolder place, Clock clock) {
    this.place = place;
    this.repository = place.repository();
    this.clock = clock;
  }

  /** Who records here by Git's own settings; empty when they do not say. */
  public Optional<Author> author() {
    String name = repository.getConfig().getString("user", null, "name");
    String mail = repository.getConfig().getString("user", null, "email");
    return name == null || name.isBlank()
        ? Optional.empty()
        : Optional.of(new Author(name, mail == null ? "" : mail));
  }

  /**
   * Files of the workspace that are new, changed or gone since they were last recorded, as paths
   * within the repository, in order. Hidden and ignored ones do not count.
   */
  public List<String> unrecorded() throws IOException {
    try (Git git = new Git(repository)) {
      StatusCommand asking = git.status();
      place.recorded().forEach(asking::addPath);
      Status status = asking.call();
      Set<String> all = new TreeSet<>(status.getUncommittedChanges());
      all.addAll(status.getUntracked());
      all.removeIf(path -> !place.isRecorded(path) || isHidden(path));
      return List.copyOf(all);
    } catch (GitAPIException | JGitInternalException e) {
      throw behind(e);
    }
  }

  private boolean isHidden(String path) {
    return path.substring(path.lastIndexOf('/') + 1).startsWith(".")
        && !path.equals(place.inRepository(".gitignore"));
  }

  /**
   * Records files as they are now.
   *
   * @param paths paths within the repository
   * @param said what to say about it
   * @param author who says so
   * @return the new version's id; empty when there was nothing to record
   * @throws HistoryTrouble when git is in the middle of something, another program recorded
   *     meanwhile, or the disk takes nothing more
   */
  public Optional<String> record(Collection<String> paths, String said, Author author)
      throws IOException {
    place.mustBeAtRest();
    if (paths.isEmpty()) {
      return Optional.empty();
    }
    RepositoryLock lock = RepositoryLock.take(repository);
    try (lock) {
      return locked(paths, said, author);
    } catch (LockFailedException e) {
      throw new HistoryTrouble(
          "another program records at this moment, or was stopped while it did",
          "try again; if it stays so, take away " + e.getFile() + ".lock");
    } catch (IOException e) {
      throw HistoryTrouble.of(e);
    }
  }

  private Optional<String> locked(Collection<String> paths, String said, Author author)
      throws IOException {
    DirCache index = taken(paths);
    ObjectId head = repository.resolve(Constants.HEAD);
    try (ObjectInserter inserter = repository.newObjectInserter();
        RevWalk walk = new RevWalk(repository)) {
      ObjectId tree = tree(head, index, new HashSet<>(paths), inserter);
      if (head != null && walk.parseCommit(head).getTree().equals(tree)) {
        return Optional.empty();
      }
      CommitBuilder commit = new CommitBuilder();
      commit.setTreeId(tree);
      if (head != null) {
        commit.setParentId(head);
      }
      PersonIdent ident = person(author, clock);
      commit.setAuthor(ident);
      commit.setCommitter(ident);
      commit.setMessage(said + "\n\n" + CopyRole.of(repository).trailer() + "\n");
      ObjectId id = inserter.insert(commit);
      inserter.flush();
      moveHead(repository, head, id, said);
      return Optional.of(id.name());
    }
  }

  /** What lies behind a failure of the library. */
  private static IOException behind(Exception failure) {
    return failure.getCause() instanceof IOException cause
        ? cause
        : new HistoryTrouble(
            "the history cannot be used: " + failure.getMessage(),
            "see what git fsck says of it; the files are as they were");
  }

  /** A person at this moment, as Git keeps one. */
  public static PersonIdent person(Author author) {
    return person(author, Clock.systemDefaultZone());
  }

  private static PersonIdent person(Author author, Clock clock) {
    return new PersonIdent(author.name(), author.mail(), clock.instant(), clock.getZone());
  }

  /** Takes the files into the repository, and into its list of what is there. */
  private DirCache taken(Collection<String> paths) throws IOException {
    List<String> there = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    paths.forEach(path -> (Files.isRegularFile(place.file(path)) ? there : gone).add(path));
    try (Git git = new Git(repository)) {
      if (!there.isEmpty()) {
        AddCommand add = git.add();
        there.forEach(add::addFilepattern);
        add.call();
      }
    } catch (GitAPIException | JGitInternalException e) {
      throw behind(e);
    }
    DirCache index = repository.lockDirCache();
    try {
      DirCacheEditor editor = index.editor();
      gone.forEach(path -> editor.add(new DirCacheEditor.DeletePath(path)));
      if (!editor.commit()) {
        throw new HistoryTrouble("another program records at this moment", "try again");
      }
    } finally {
      index.unlock();
    }
    return repository.readDirCache();
  }

  /** The tree of the last version with these files as the list has them. */
  private ObjectId tree(ObjectId head, DirCache index, Set<String> paths, ObjectInserter inserter)
      throws IOException {
    DirCache all = DirCache.newInCore();
    DirCacheBuilder builder = all.builder();
    if (head != null) {
      try (RevWalk walk = new RevWalk(repository)) {
        DirCache old = DirCache.read(walk.getObjectReader(), walk.parseCommit(head).getTree());
        for (int i = 0; i < old.getEntryCount(); i++) {
          if (!paths.contains(old.getEntry(i).getPathString())) {
            builder.add(old.getEntry(i));
          }
        }
      }
    }
    for (String path : paths) {
      DirCacheEntry entry = index.getEntry(path);
      if (entry != null) {
        DirCacheEntry copy = new DirCacheEntry(path);
        copy.setFileMode(entry.getFileMode());
        copy.setObjectId(entry.getObjectId());
        builder.add(copy);
      }
    }
    builder.finish();
    return all.writeTree(inserter);
  }

  /**
   * Makes another version the last one, if the last one is still that which was expected.
   *
   * @param expected the last version now; null when there is none
   */
  public static void moveHead(Repository repository, ObjectId expected, ObjectId to, String said)
      throws IOException {
    RefUpdate update = repository.updateRef(Constants.HEAD);
    update.setNewObjectId(to);
    update.setExpectedOldObjectId(expected == null ? ObjectId.zeroId() : expected);
    update.setRefLogMessage("limberboard: " + said, false);
    RefUpdate.Result result = update.forceUpdate();
    switch (result) {
      case NEW, FAST_FORWARD, FORCED, NO_CHANGE -> {}
      case LOCK_FAILURE ->
          throw new HistoryTrouble(
              "another program records at this moment, or was stopped while it did",
              "try again; if it stays so, take away files ending in .lock from the folder .git");
      default ->
          throw new HistoryTrouble(
              "the history could not be written (" + result + ")",
              "see whether the folder .git may be written and the disk has room");
    }
  }
}
