package limberboard.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.GitRun;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.sharing.merge.Choice;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevWalk;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Merges are those of the git command on the same random histories, wherever both find nothing to
 * ask. Git asks more: it takes no changes of neighbouring lines.
 */
class GitMergeTest {
  private static final Author ADA = new Author("Ada", "ada@example.org");
  private static final int HISTORIES = 40;

  @TempDir Path folder;
  private WorkspaceFolders folders;
  private final List<Path> pages = new ArrayList<>();

  @Test
  void areThoseOfGitWhereBothAreClean() throws IOException {
    folders = NewWorkspace.in(folder.resolve("yard"));
    RandomEdits edits = new RandomEdits(7);
    for (int i = 0; i < 6; i++) {
      pages.add(folders.articles().resolve("topics/page-" + i + ".md"));
      Files.writeString(pages.get(i), edits.page());
    }
    Beginning.begin(folders, ADA);
    GitRun git = new GitRun(folders.root());
    Assumptions.assumeTrue(
        git.run("merge-tree", "--write-tree", "HEAD", "HEAD").code() == 0,
        "this git has no merge-tree --write-tree: not compared with it");
    String base = git.run("rev-parse", "HEAD").good();
    int both = 0;
    int ours = 0;
    int gits = 0;
    for (int i = 0; i < HISTORIES; i++) {
      String one = side(git, base, edits, i);
      String other = side(git, base, edits, i + 1);
      GitRun.Said said = git.run("merge-tree", "--write-tree", one, other);
      String merged = merged(one, other);
      ours += merged.isEmpty() ? 0 : 1;
      gits += said.code() == 0 ? 1 : 0;
      if (said.code() == 0 && !merged.isEmpty()) {
        both++;
        assertThat(merged)
            .as("history %s: %s and %s", i, one, other)
            .isEqualTo(said.out().lines().findFirst().orElseThrow());
      }
    }
    assertThat(both).isGreaterThan(HISTORIES / 4);
    assertThat(ours).as("merged without a question, of %s", HISTORIES).isGreaterThanOrEqualTo(gits);
    assertThat(ours).isLessThan(HISTORIES);
  }

  /** A version with some changes of its own; every third history renames or adds a page. */
  private String side(GitRun git, String base, RandomEdits edits, int history) throws IOException {
    git.run("reset", "-q", "--hard", base).good();
    for (int i = 0; i < 2 + edits.below(4); i++) {
      Path page = pages.get(edits.below(pages.size()));
      if (Files.exists(page)) {
        Files.writeString(page, edits.changed(Files.readString(page)));
      }
    }
    if (history % 3 == 0) {
      Path page = pages.get(edits.below(pages.size()));
      Files.move(page, page.resolveSibling("renamed-" + page.getFileName()));
      Files.writeString(page.resolveSibling(edits.words() + ".md"), edits.page());
    }
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      Recorder recorder = new Recorder(place);
      return recorder.record(recorder.unrecorded(), "Some changes", ADA).orElseThrow();
    }
  }

  /** The tree of the merge, or nothing where something is open. */
  private String merged(String one, String other) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow();
        RevWalk walk = new RevWalk(place.repository())) {
      VersionMerge merge = new VersionMerge(place.repository(), walk);
      VersionMerge.Result result =
          merge.merge(
              walk.parseCommit(ObjectId.fromString(one)),
              walk.parseCommit(ObjectId.fromString(other)),
              (page, path) -> false);
      return result.conflicts().isEmpty()
          ? merge.write(result.files(), conflict -> Choice.OURS).name()
          : "";
    }
  }
}
