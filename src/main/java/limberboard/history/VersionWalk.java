package limberboard.history;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.diff.DiffConfig;
import org.eclipse.jgit.diff.DiffEntry;
import org.eclipse.jgit.diff.RenameDetector;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.FollowFilter;
import org.eclipse.jgit.revwalk.RenameCallback;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevSort;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.AndTreeFilter;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.eclipse.jgit.treewalk.filter.PathSuffixFilter;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/** Walks back through the versions in which a file was changed, also under earlier names. */
final class VersionWalk {
  private final HistoryFolder place;
  private final Repository repository;

  VersionWalk(HistoryFolder place) {
    this.place = place;
    this.repository = place.repository();
  }

  /**
   * The versions of a file, the latest first.
   *
   * @param path its path within the repository, now or when it was last there
   */
  List<Version> of(String path) throws IOException {
    ObjectId head = repository.resolve(Constants.HEAD);
    if (head == null) {
      return List.of();
    }
    List<String> names = new ArrayList<>(List.of(path));
    List<RevCommit> commits = new ArrayList<>();
    try (RevWalk walk = new RevWalk(repository)) {
      FollowFilter follow = FollowFilter.create(path, repository.getConfig().get(DiffConfig.KEY));
      follow.setRenameCallback(
          new RenameCallback() {
            @Override
            public void renamed(DiffEntry entry) {
              names.add(entry.getOldPath());
            }
          });
      walk.setTreeFilter(follow);
      walk.sort(RevSort.TOPO);
      walk.markStart(walk.parseCommit(head));
      walk.forEach(commits::add);
      List<Version> versions = new ArrayList<>();
      int name = 0;
      for (RevCommit commit : commits) {
        int at = nameAt(walk, commit, names, name);
        name = at < 0 ? name : at;
        versions.add(version(commit, names.get(name), at >= 0));
      }
      return versions;
    }
  }

  /** Which of the names, from the latest known one on, the file has in a version; -1 for none. */
  private int nameAt(RevWalk walk, RevCommit commit, List<String> names, int from)
      throws IOException {
    for (int i = from; i < names.size(); i++) {
      try (TreeWalk tree =
          TreeWalk.forPath(walk.getObjectReader(), names.get(i), commit.getTree())) {
        if (tree != null) {
          return i;
        }
      }
    }
    return -1;
  }

  private Version version(RevCommit commit, String path, boolean isThere) {
    PersonIdent author = commit.getAuthorIdent();
    return new Version(
        commit.name(),
        author.getName(),
        author.getEmailAddress(),
        ZonedDateTime.ofInstant(author.getWhenAsInstant(), author.getZoneId()),
        commit.getShortMessage(),
        place.inWorkspace(path),
        isThere);
  }

  /** Where a file of this name last lay that is there no more, as a path within the repository. */
  Optional<String> lastPlace(String fileName) throws IOException {
    ObjectId head = repository.resolve(Constants.HEAD);
    if (head == null) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setTreeFilter(
          AndTreeFilter.create(PathSuffixFilter.create("/" + fileName), TreeFilter.ANY_DIFF));
      walk.markStart(walk.parseCommit(head));
      for (RevCommit commit : walk) {
        Optional<String> found = changed(walk, commit, fileName);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    }
  }

  private Optional<String> changed(RevWalk walk, RevCommit commit, String fileName)
      throws IOException {
    try (TreeWalk tree = new TreeWalk(walk.getObjectReader())) {
      tree.setRecursive(true);
      tree.setFilter(
          AndTreeFilter.create(PathSuffixFilter.create("/" + fileName), TreeFilter.ANY_DIFF));
      tree.addTree(commit.getTree());
      if (commit.getParentCount() > 0) {
        tree.addTree(walk.parseCommit(commit.getParent(0)).getTree());
      } else {
        tree.addTree(new EmptyTreeIterator());
      }
      while (tree.next()) {
        if (place.isRecorded(tree.getPathString())) {
          return Optional.of(tree.getPathString());
        }
      }
      return Optional.empty();
    }
  }

  /** The name that a file which was taken away got instead, if it was a renaming. */
  Optional<String> renamedTo(String path) throws IOException {
    ObjectId head = repository.resolve(Constants.HEAD);
    if (head == null) {
      return Optional.empty();
    }
    try (RevWalk walk = new RevWalk(repository);
        TreeWalk tree = new TreeWalk(walk.getObjectReader())) {
      walk.setTreeFilter(AndTreeFilter.create(PathFilter.create(path), TreeFilter.ANY_DIFF));
      walk.markStart(walk.parseCommit(head));
      RevCommit commit = walk.next();
      if (commit == null || commit.getParentCount() == 0) {
        return Optional.empty();
      }
      tree.setRecursive(true);
      tree.addTree(walk.parseCommit(commit.getParent(0)).getTree());
      tree.addTree(commit.getTree());
      RenameDetector renames = new RenameDetector(repository);
      renames.addAll(DiffEntry.scan(tree));
      return renames.compute().stream()
          .filter(entry -> entry.getChangeType() == DiffEntry.ChangeType.RENAME)
          .filter(entry -> entry.getOldPath().equals(path))
          .map(DiffEntry::getNewPath)
          .findFirst();
    }
  }
}
