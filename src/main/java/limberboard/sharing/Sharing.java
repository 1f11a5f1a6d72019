package limberboard.sharing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.history.Author;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.history.RepositoryLock;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;

/** Pulls what another copy of the workspace has, and merges it with what this one has. */
public final class Sharing {
  private final HistoryFolder place;
  private final Repository repository;
  private final Connection connection;

  /** Sharing of this workspace. */
  public Sharing(HistoryFolder place, Connection connection) {
    this.place = place;
    this.repository = place.repository();
    this.connection = connection;
  }

  /** With what this workspace is shared, as it may be shown; empty while that is not said. */
  public Optional<String> with() throws IOException {
    try {
      return Optional.of(Remote.of(repository, Optional.empty()).said());
    } catch (HistoryTrouble unknown) {
      return Optional.empty();
    }
  }

  /**
   * Records what is not recorded, fetches, merges, and then changes the workspace's files: all of
   * it when nothing is open, and otherwise none.
   *
   * @throws HistoryTrouble when the remote cannot be reached or used, or a file cannot be written
   */
  public PullOutcome pull(PullWish wish) throws IOException {
    try {
      return pulled(wish);
    } catch (IOException e) {
      throw HistoryTrouble.of(e);
    }
  }

  private PullOutcome pulled(PullWish wish) throws IOException {
    int first = prepare(wish.author());
    Remote remote = Remote.of(repository, wish.with());
    connection.fetch(repository, remote, false);
    Ref there = repository.exactRef(remote.tracking());
    if (there == null) {
      throw new HistoryTrouble(
          remote.said() + " has no branch " + remote.branch() + " yet",
          "limberboard share push sends yours");
    }
    ObjectId head = repository.resolve(Constants.HEAD);
    if (head == null) {
      throw new HistoryTrouble(
          "nothing is recorded here yet", "limberboard history --record \"Begin\" records it");
    }
    try (RevWalk walk = new RevWalk(repository)) {
      RevCommit ours = walk.parseCommit(head);
      RevCommit theirs = walk.parseCommit(there.getObjectId());
      if (!wish.anyway()) {
        mustNotBeRewritten(walk, remote, theirs);
      }
      return merge(walk, wish, remote, first, ours, theirs);
    }
  }

  /** Goes on with what was begun, and records what is not recorded. */
  int prepare(Author author) throws IOException {
    place.mustBeAtRest();
    new MoveOn(place).goOn(connection.stage());
    Recorder recorder = new Recorder(place);
    List<String> files = recorder.unrecorded();
    String said = files.size() == 1 ? "Change " + name(files.get(0)) : "Change several pages";
    return recorder.record(files, said, author).isPresent() ? files.size() : 0;
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
  }

  private void mustNotBeRewritten(RevWalk walk, Remote remote, RevCommit theirs)
      throws IOException {
    Ref seen = repository.exactRef(remote.seen());
    if (seen != null
        && !walk.isMergedInto(walk.parseCommit(seen.getObjectId()), walk.parseCommit(theirs))) {
      throw new HistoryTrouble(
          remote.said() + " was rewritten: versions that you have had from it are not there now",
          "ask whoever keeps it why; share pull --anyway merges with what is there, and yours go"
              + " back with your next push. Nothing was changed");
    }
  }

  private PullOutcome merge(
      RevWalk walk, PullWish wish, Remote remote, int first, RevCommit ours, RevCommit theirs)
      throws IOException {
    VersionMerge merging = new VersionMerge(repository, walk);
    if (walk.isMergedInto(theirs, ours)) {
      seen(remote, theirs);
      return new PullOutcome.UpToDate(first, count(ours, Optional.of(theirs)));
    }
    RevCommit common = common(merging, wish, remote, ours, theirs);
    VersionMerge.Result result =
        merging.merge(ours, theirs, new OwnPages(repository, ours, theirs));
    List<Conflict> open =
        result.conflicts().stream()
            .filter(conflict -> wish.settlement().of(conflict).isEmpty())
            .toList();
    if (!open.isEmpty()) {
      return new PullOutcome.Open(first, open, wish.settlement().idle(result.conflicts()));
    }
    connection.stage().step("Merging", 1, 1);
    boolean onlyTheirs = ours.equals(common) && result.kept().isEmpty();
    ObjectId to = onlyTheirs ? theirs : commit(merging, wish, result, ours, theirs);
    List<String> changed = new MoveOn(place).to(ours, to, connection.stage());
    seen(remote, theirs);
    return new PullOutcome.Pulled(
        first,
        count(theirs, Optional.of(ours)),
        changed.stream().map(place::inWorkspace).toList(),
        merged(result),
        result.kept().stream().map(place::inWorkspace).toList(),
        count(to, Optional.of(theirs)));
  }

  /** A version that both come from; a copy that holds only the latest part fetches the rest. */
  private RevCommit common(
      VersionMerge merging, PullWish wish, Remote remote, RevCommit ours, RevCommit theirs)
      throws IOException {
    List<RevCommit> bases = merging.bases(ours, theirs);
    if (bases.isEmpty() && !repository.getObjectDatabase().getShallowCommits().isEmpty()) {
      throw new HistoryTrouble(
          "this copy holds only the latest part of the history, too little to merge",
          "fetch the rest with git: git fetch --unshallow " + remote.name());
    }
    if (bases.isEmpty() && !wish.anyway()) {
      throw new HistoryTrouble(
          "this workspace and " + remote.said() + " were begun apart",
          "share pull --anyway merges them page by page all the same. Nothing was changed");
    }
    return bases.isEmpty() ? null : bases.get(0);
  }

  private ObjectId commit(
      VersionMerge merging,
      PullWish wish,
      VersionMerge.Result result,
      RevCommit ours,
      RevCommit theirs)
      throws IOException {
    ObjectId tree =
        merging.write(
            result.files(), conflict -> wish.settlement().of(conflict).orElse(Choice.OURS));
    CommitBuilder commit = new CommitBuilder();
    commit.setTreeId(tree);
    commit.setParentIds(ours, theirs);
    commit.setAuthor(Recorder.person(wish.author()));
    commit.setCommitter(commit.getAuthor());
    commit.setMessage("Merge what others changed\n\n" + CopyRole.of(repository).trailer() + "\n");
    try (ObjectInserter inserter = repository.newObjectInserter()) {
      ObjectId id = inserter.insert(commit);
      inserter.flush();
      return id;
    }
  }

  private List<String> merged(VersionMerge.Result result) {
    TreeSet<String> merged = new TreeSet<>();
    for (MergedFile file : result.files()) {
      if (file instanceof MergedFile.Text text) {
        merged.add(place.inWorkspace(text.path()));
      } else if (file instanceof MergedFile.Whole whole) {
        merged.add(place.inWorkspace(whole.conflict().file()));
      }
    }
    return new ArrayList<>(merged);
  }

  /** How many versions one has that the other has not, whatever the clocks said. */
  int count(ObjectId of, Optional<ObjectId> without) throws IOException {
    Set<ObjectId> all = versions(of);
    if (without.isPresent()) {
      all.removeAll(versions(without.get()));
    }
    return all.size();
  }

  private Set<ObjectId> versions(ObjectId last) throws IOException {
    Set<ObjectId> all = new HashSet<>();
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setRetainBody(false);
      walk.markStart(walk.parseCommit(last));
      for (RevCommit each : walk) {
        all.add(each.getId());
      }
    }
    return all;
  }

  /** Remembers how much of the remote this copy has had. */
  void seen(Remote remote, ObjectId id) throws IOException {
    RepositoryLock lock = RepositoryLock.take(repository);
    try (lock) {
      RefUpdate update = repository.updateRef(remote.seen());
      update.setNewObjectId(id);
      update.setForceUpdate(true);
      RefTrouble.unlessDone(repository, remote.seen(), update.forceUpdate());
    }
  }
}
