package limberboard.writing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.Copying;
import limberboard.sharing.HowFar;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.PullWish;
import limberboard.sharing.Sending;
import limberboard.sharing.Sharing;

/** The other copy of a workspace that is killed again and again, which is never killed itself. */
final class OtherCopy {
  private static final Author HERE = new Author("Ada", "ada@example.org");
  private static final Author THERE = new Author("Bob", "bob@example.org");
  private static final int AT_ONCE = 3;

  private final WorkspaceFolders folders;
  private final Map<Integer, Integer> sent = new HashMap<>();

  private OtherCopy(WorkspaceFolders folders) {
    this.folders = folders;
    for (int i = 0; i < KilledPages.COUNT; i++) {
      sent.put(i, 0);
    }
  }

  /** Begins a history in the workspace, and copies it by way of a remote in this folder. */
  static OtherCopy of(WorkspaceFolders first, Path folder) throws IOException {
    Path remote = folder.resolve("remote.git");
    Beginning.begin(first, HERE);
    try (HistoryFolder place = HistoryFolder.of(first).orElseThrow()) {
      new CopyRole(Own.YARD).writeTo(place.repository());
      new Sending(place, connection()).push(HERE, Optional.of(remote.toString()), true);
    }
    Path there = folder.resolve("other");
    new Copying(connection()).copy(remote.toString(), there, new CopyRole(Own.OWNER));
    return new OtherCopy(new WorkspaceFolders(there));
  }

  private static Connection connection() {
    return new Connection(Asking.nobody(), List.of("ssh"), List.of(), HowFar.silent());
  }

  /** Pulls in the first copy. */
  static PullOutcome pull(WorkspaceFolders folders) throws IOException {
    return pull(folders, HERE);
  }

  private static PullOutcome pull(WorkspaceFolders folders, Author author) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      return new Sharing(place, connection()).pull(PullWish.by(author));
    }
  }

  /** Pushes from the first copy. */
  static void push(WorkspaceFolders folders) throws IOException {
    push(folders, HERE);
  }

  private static void push(WorkspaceFolders folders, Author author) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      new Sending(place, connection()).push(author, Optional.empty(), false);
    }
  }

  /** Takes over what the first copy has sent, changes its part of some pages, and sends them. */
  void change(Random random) throws IOException {
    takeOver();
    for (int i = 0; i < AT_ONCE; i++) {
      int page = random.nextInt(KilledPages.COUNT);
      Path file = folders.root().resolve(KilledPages.path(page));
      String text = Files.readString(file);
      sent.merge(page, 1, Integer::sum);
      Files.writeString(file, KilledPages.withThere(text, sent.get(page)));
    }
    push(folders, THERE);
  }

  /** Takes over what the first copy has sent. */
  void takeOver() throws IOException {
    if (pull(folders, THERE) instanceof PullOutcome.Open open) {
      throw new IOException("the other copy is asked: " + open.conflicts());
    }
  }

  /** What this copy has sent of a page's other part. */
  int sent(int page) {
    return sent.get(page);
  }

  /** A page as it is in this copy. */
  String text(int page) throws IOException {
    return Files.readString(folders.root().resolve(KilledPages.path(page)));
  }
}
