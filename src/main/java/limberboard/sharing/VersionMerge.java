package limberboard.sharing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import limberboard.sharing.MergedFile.Place;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevTree;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;

/** Brings two versions of a repository together, without touching a file of the workspace. */
final class VersionMerge {
  private final Repository repository;
  private final RevWalk walk;

  VersionMerge(Repository repository, RevWalk walk) {
    this.repository = repository;
    this.walk = walk;
  }

  /**
   * What came of it.
   *
   * @param files what is to become of every file
   * @param kept pages that stayed as this copy has them
   */
  record Result(List<MergedFile> files, Set<String> kept) {
    /** What is open. */
    List<Conflict> conflicts() {
      return files.stream().flatMap(file -> file.conflicts().stream()).toList();
    }
  }

  /** Merges; pages that are kept are asked for. */
  Result merge(RevCommit ours, RevCommit theirs, TreeMerge.KeptPages kept) throws IOException {
    return merge(common(ours, theirs), ours.getTree(), theirs.getTree(), kept);
  }

  private Result merge(RevTree base, RevTree ours, RevTree theirs, TreeMerge.KeptPages kept)
      throws IOException {
    try (ObjectReader reader = repository.newObjectReader()) {
      TreeMerge merge =
          new TreeMerge(
              reader,
              new TreeMerge.Side(base == null ? Map.of() : Leaf.of(reader, base), Map.of()),
              new TreeMerge.Side(Leaf.of(reader, ours), Renames.between(repository, base, ours)),
              new TreeMerge.Side(
                  Leaf.of(reader, theirs), Renames.between(repository, base, theirs)),
              kept);
      List<MergedFile> files = merge.merge();
      return new Result(files, merge.kept());
    }
  }

  /** The versions that two come from. */
  List<RevCommit> bases(RevCommit ours, RevCommit theirs) throws IOException {
    walk.reset();
    walk.setRevFilter(RevFilter.MERGE_BASE);
    walk.markStart(walk.parseCommit(ours));
    walk.markStart(walk.parseCommit(theirs));
    List<RevCommit> bases = new ArrayList<>();
    for (RevCommit base = walk.next(); base != null; base = walk.next()) {
      bases.add(base);
    }
    walk.reset();
    walk.setRevFilter(RevFilter.ALL);
    return bases;
  }

  /** What two versions come from; several are brought together first. Null when it is nothing. */
  private RevTree common(RevCommit ours, RevCommit theirs) throws IOException {
    List<RevCommit> bases = bases(ours, theirs);
    if (bases.isEmpty()) {
      return null;
    }
    RevTree tree = walk.parseCommit(bases.get(0)).getTree();
    for (RevCommit other : bases.subList(1, bases.size())) {
      RevTree base = common(walk.parseCommit(bases.get(0)), walk.parseCommit(other));
      Result both = merge(base, tree, walk.parseCommit(other).getTree(), (page, path) -> false);
      tree = walk.parseTree(write(both.files(), conflict -> Choice.BEFORE));
    }
    return tree;
  }

  /** Writes the merged files into the repository, each conflict settled; returns their tree. */
  ObjectId write(List<MergedFile> files, Function<Conflict, Choice> choice) throws IOException {
    try (ObjectInserter inserter = repository.newObjectInserter()) {
      List<Place> places = new ArrayList<>();
      for (MergedFile file : files) {
        if (file instanceof MergedFile.Taken taken) {
          places.add(new Place(taken.path(), taken.leaf()));
        } else if (file instanceof MergedFile.Whole whole) {
          whole.chosen(choice.apply(whole.conflict())).ifPresent(places::add);
        } else if (file instanceof MergedFile.Text text) {
          ObjectId id =
              inserter.insert(Constants.OBJ_BLOB, Constants.encode(text.text().text(choice)));
          places.add(new Place(text.path(choice), new Leaf(text.like().mode(), id)));
        }
      }
      DirCache all = DirCache.newInCore();
      DirCacheBuilder builder = all.builder();
      TreeMerge.placed(places)
          .forEach(
              (path, leaf) -> {
                DirCacheEntry entry = new DirCacheEntry(path);
                entry.setFileMode(leaf.mode());
                entry.setObjectId(leaf.id());
                builder.add(entry);
              });
      builder.finish();
      ObjectId tree = all.writeTree(inserter);
      inserter.flush();
      return tree;
    }
  }
}
