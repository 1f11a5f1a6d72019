package limberboard.sharing;

import java.io.IOException;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.history.CopyRole;
import limberboard.history.parts.TextParts;
import limberboard.library.header.HeaderText;
import limberboard.sharing.MergedFile.Place;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.filter.AndTreeFilter;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.eclipse.jgit.treewalk.filter.TreeFilter;

/**
 * Pages whose header says whose own they are, in a copy that is theirs: they stay, unless all that
 * others did to them was recorded in copies of the same.
 */
final class OwnPages implements TreeMerge.KeptPages {
  private static final Pattern OWN = Pattern.compile("(?m)^own: *(\\w+) *\r?$");

  private final Repository repository;
  private final RevCommit ours;
  private final RevCommit theirs;

  OwnPages(Repository repository, RevCommit ours, RevCommit theirs) {
    this.repository = repository;
    this.ours = ours;
    this.theirs = theirs;
  }

  @Override
  public boolean isKept(Place page, String theirPath) throws IOException {
    CopyRole copy = CopyRole.of(repository);
    return page.path().endsWith(".md")
        && mark(page).filter(copy.role().word()::equals).isPresent()
        && changedByOthers(theirPath, copy);
  }

  private Optional<String> mark(Place page) throws IOException {
    try (ObjectReader reader = repository.newObjectReader()) {
      return page.leaf().text(reader).flatMap(OwnPages::mark);
    }
  }

  /** The mark also counts where something else in the header cannot be read. */
  private static Optional<String> mark(String text) {
    TextParts parts = TextParts.ofPage(text);
    return parts.header().isEmpty()
        ? HeaderText.part(text).flatMap(OwnPages::unparsed)
        : parts.value("own");
  }

  private static Optional<String> unparsed(HeaderText page) {
    return OWN.matcher(page.header()).results().findFirst().map(line -> line.group(1));
  }

  private boolean changedByOthers(String path, CopyRole copy) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setTreeFilter(AndTreeFilter.create(PathFilter.create(path), TreeFilter.ANY_DIFF));
      walk.markStart(walk.parseCommit(theirs));
      walk.markUninteresting(walk.parseCommit(ours));
      for (RevCommit commit : walk) {
        boolean same =
            CopyRole.recordedIn(commit.getFullMessage()).filter(copy.role()::equals).isPresent();
        if (!same) {
          return true;
        }
      }
      return false;
    }
  }
}
