package limberboard.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.library.NewWorkspace;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.Copying;
import limberboard.sharing.HowFar;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.PullWish;
import limberboard.sharing.Sending;
import limberboard.sharing.Sharing;

/**
 * Pulls a page that is large when it is written, and a small one.
 *
 * @param page the large one
 */
record Pulling(String page) implements TriedWork {
  private static final String SMALL = "articles/topics/a.md";

  private static Connection connection() {
    return new Connection(Asking.nobody(), List.of("ssh"), List.of(), HowFar.silent());
  }

  @Override
  public void prepare(Path workspace, Path elsewhere) throws IOException {
    Path first = elsewhere.resolve(workspace.getFileName() + "-first");
    String remote = elsewhere.resolve(workspace.getFileName() + ".git").toString();
    NewWorkspace.in(first);
    Beginning.begin(TriedWork.folders(first), TriedWorks.ADA);
    push(first, Optional.of(remote));
    Files.createDirectories(workspace.getParent());
    new Copying(connection()).copy(remote, workspace, new CopyRole(Own.OWNER));
    TriedWork.write(first, BIG, page);
    TriedWork.write(first, SMALL, "---\ntitle: A\n---\n");
    push(first, Optional.empty());
    TriedWork.write(workspace, "articles/topics/mine.md", "---\ntitle: Mine\n---\n");
  }

  private static void push(Path from, Optional<String> remote) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(TriedWork.folders(from)).orElseThrow()) {
      new Sending(place, connection()).push(TriedWorks.ADA, remote, remote.isPresent());
    }
  }

  @Override
  public String attempt(Path workspace) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(TriedWork.folders(workspace)).orElseThrow()) {
      PullOutcome outcome = new Sharing(place, connection()).pull(PullWish.by(TriedWorks.ADA));
      return outcome instanceof PullOutcome.Open ? outcome.toString() : DONE;
    }
  }

  /** Files that came may be there whole already; the pull goes on with the others. */
  @Override
  public boolean isAsBefore(Path workspace) {
    String big = TriedWork.read(workspace, BIG);
    return (big.isEmpty() || big.equals(page)) && hasMine(workspace);
  }

  private static boolean hasMine(Path workspace) {
    return TriedWork.read(workspace, "articles/topics/mine.md").contains("Mine");
  }

  @Override
  public boolean isDone(Path workspace) {
    return TriedWork.read(workspace, BIG).equals(page)
        && !TriedWork.read(workspace, SMALL).isEmpty()
        && hasMine(workspace);
  }
}
