package limberboard.sharing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.history.RepositoryLock;
import limberboard.library.file.SafeFiles;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEditor.DeletePath;
import org.eclipse.jgit.dircache.DirCacheEditor.PathEdit;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * Brings the workspace from its last version to another: the files, git's list of them, and last
 * the version itself. What it is about to do stands in a note until it is done, so that a program
 * that was killed meanwhile is gone on with.
 */
final class MoveOn {
  /** The note's name in the repository's own folder. */
  static final String NOTE = "limberboard-pull";

  private final HistoryFolder place;
  private final Repository repository;
  private final Path note;

  MoveOn(HistoryFolder place) {
    this.place = place;
    this.repository = place.repository();
    this.note = repository.getDirectory().toPath().resolve(NOTE);
  }

  /**
   * Moves on.
   *
   * @param from the last version now
   * @param to the version to be
   * @return the paths that changed, within the repository
   */
  List<String> to(ObjectId from, ObjectId to, HowFar stage) throws IOException {
    WorkFiles files = files(from, to);
    files.mustBeSafe();
    List<String> inTheWay = files.inTheWay();
    if (!inTheWay.isEmpty()) {
      throw new HistoryTrouble(
          inTheWay.get(0)
              + (inTheWay.size() > 1 ? " and " + (inTheWay.size() - 1) + " more" : "")
              + " would be overwritten and is not recorded",
          "record or move it, with git where it is no page, and pull again; nothing was changed");
    }
    RepositoryLock lock = RepositoryLock.take(repository);
    try (lock) {
      SafeFiles.write(note, from.name() + " " + to.name() + "\n");
      return finish(files, from, to, stage);
    }
  }

  private WorkFiles files(ObjectId from, ObjectId to) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      Map<String, Leaf> before = Leaf.of(walk.getObjectReader(), walk.parseCommit(from).getTree());
      Map<String, Leaf> after = Leaf.of(walk.getObjectReader(), walk.parseCommit(to).getTree());
      return new WorkFiles(place, before, after);
    }
  }

  private List<String> finish(WorkFiles files, ObjectId from, ObjectId to, HowFar stage)
      throws IOException {
    files.write(stage);
    List<String> changed = files.changed();
    try {
      list(changed, files);
      Recorder.moveHead(repository, from, to, "pull");
    } catch (LockFailedException e) {
      throw new HistoryTrouble(
          "git is working in this repository at the moment, or was stopped while it did",
          "pull again; if it stays so, take away " + e.getFile() + ".lock");
    }
    Files.deleteIfExists(note);
    return changed;
  }

  /** Tells git's list of files what is there now. */
  private void list(List<String> changed, WorkFiles files) throws IOException {
    DirCache index = repository.lockDirCache();
    try {
      DirCacheEditor editor = index.editor();
      for (String path : changed) {
        Leaf leaf = files.after(path);
        if (leaf == null) {
          editor.add(new DeletePath(path));
        } else {
          editor.add(edit(path, leaf));
        }
      }
      editor.commit();
    } finally {
      index.unlock();
    }
  }

  private PathEdit edit(String path, Leaf leaf) throws IOException {
    Path file = place.file(path);
    int size = (int) Files.size(file);
    Instant when = Files.getLastModifiedTime(file).toInstant();
    return new PathEdit(path) {
      @Override
      public void apply(DirCacheEntry entry) {
        entry.setFileMode(leaf.mode());
        entry.setObjectId(leaf.id());
        entry.setLength(size);
        entry.setLastModified(when);
      }
    };
  }

  /** Whether something was begun and has not come to its end. */
  boolean isCutShort() {
    return Files.exists(note);
  }

  /** Goes on with what a killed program had begun; waits while another program is at it. */
  void goOn(HowFar stage) throws IOException {
    if (isCutShort()) {
      RepositoryLock lock = RepositoryLock.take(repository);
      try (lock) {
        goneOn(stage);
      }
    }
  }

  /**
   * Goes on with what a killed program had begun, where nobody has changed the files since;
   * otherwise they are changes like any other. Only for whoever holds the repository's lock.
   *
   * @return whether it came to its end
   */
  boolean goneOn(HowFar stage) throws IOException {
    if (!isCutShort()) {
      return false;
    }
    String[] ids = Files.readString(note, StandardCharsets.UTF_8).strip().split(" ");
    boolean sound = ids.length == 2 && ObjectId.isId(ids[0]) && ObjectId.isId(ids[1]);
    ObjectId head = repository.resolve(Constants.HEAD);
    if (sound && ObjectId.fromString(ids[0]).equals(head)) {
      ObjectId to = ObjectId.fromString(ids[1]);
      try {
        WorkFiles files = files(head, to);
        files.clear();
        if (files.inTheWay().isEmpty()) {
          finish(files, head, to, stage);
          return true;
        }
      } catch (MissingObjectException e) {
        // the version was never written whole: nothing had begun
      }
    }
    Files.deleteIfExists(note);
    return false;
  }
}
