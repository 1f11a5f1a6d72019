package limberboard.sharing;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.jgit.diff.DiffEntry;
import org.eclipse.jgit.diff.RenameDetector;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.treewalk.EmptyTreeIterator;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/** Which files one version has under other names than another. */
final class Renames {
  private static final int MOST = 2_000;

  private Renames() {}

  /** Old path to new path. */
  static Map<String, String> between(Repository repository, RevTree before, RevTree now)
      throws IOException {
    Map<String, String> renames = new HashMap<>();
    if (before == null) {
      return renames;
    }
    try (ObjectReader reader = repository.newObjectReader();
        TreeWalk walk = new TreeWalk(reader)) {
      walk.setRecursive(true);
      walk.addTree(before);
      if (now == null) {
        walk.addTree(new EmptyTreeIterator());
      } else {
        walk.addTree(now);
      }
      walk.setFilter(TreeFilter.ANY_DIFF);
      RenameDetector detector = new RenameDetector(repository);
      detector.setRenameLimit(MOST);
      detector.addAll(DiffEntry.scan(walk));
      for (DiffEntry entry : detector.compute()) {
        if (entry.getChangeType() == DiffEntry.ChangeType.RENAME) {
          renames.put(entry.getOldPath(), entry.getNewPath());
        }
      }
    }
    return renames;
  }
}
