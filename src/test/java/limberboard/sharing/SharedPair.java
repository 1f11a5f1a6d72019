package limberboard.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.CopyRole;
import limberboard.history.GitRun;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;

/** A yard's workspace and an owner's copy of it, with a remote between them, in a test's folder. */
final class SharedPair {
  static final Author ADA = new Author("Ada", "ada@example.org");
  static final Author BOB = new Author("Bob", "bob@example.org");
  static final String PAGE = "articles/topics/knots.md";
  static final String TEXT =
      "---\ntitle: Knots\nminutes: 5\n---\n# Use\n\nTie it.\n\nPull it.\n\nLook at it.\n";

  final Path folder;
  final Path remote;
  final Copy yard;
  final Copy owner;

  /** One copy, and who works in it. */
  record Copy(WorkspaceFolders folders, Author author) {
    Path file(String path) {
      return folders.root().resolve(path);
    }

    String read(String path) {
      try {
        return Files.readString(file(path));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    void write(String path, String text) {
      try {
        Files.createDirectories(file(path).getParent());
        Files.writeString(file(path), text);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    void change(String path, String old, String now) {
      String text = read(path);
      assertThat(text).contains(old);
      write(path, text.replace(old, now));
    }

    void record(String said) throws IOException {
      try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
        Recorder recorder = new Recorder(place);
        recorder.record(recorder.unrecorded(), said, author);
      }
    }

    PullOutcome pull(String... settled) throws IOException {
      return pull(connection(HowFar.silent()), false, settled);
    }

    PullOutcome pull(Connection connection, boolean anyway, String... settled) throws IOException {
      try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
        return new Sharing(place, connection)
            .pull(
                new PullWish(author, Settlement.read(List.of(settled)), Optional.empty(), anyway));
      }
    }

    Sending.Sent push() throws IOException {
      try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
        return new Sending(place, connection(HowFar.silent()))
            .push(author, Optional.empty(), false);
      }
    }

    GitRun git() {
      return new GitRun(folders.root());
    }

    /** Git finds nothing to say against the copy. */
    void isSound() {
      assertThat(git().run("status", "--porcelain").good()).isEmpty();
      git().run("fsck", "--strict").good();
    }
  }

  static Connection connection(HowFar stage) {
    return new Connection(Asking.nobody(), List.of("ssh"), List.of(), stage);
  }

  SharedPair(Path folder) throws IOException {
    this.folder = folder;
    this.remote = folder.resolve("remote.git");
    WorkspaceFolders first = NewWorkspace.in(folder.resolve("yard"));
    this.yard = new Copy(first, ADA);
    yard.write(PAGE, TEXT);
    yard.write("boats/knot/log.csv", "date,work,note\n2026-01-01,launched,\n");
    Beginning.begin(first, ADA);
    try (HistoryFolder place = HistoryFolder.of(first).orElseThrow()) {
      new CopyRole(Own.YARD).writeTo(place.repository());
      new Sending(place, connection(HowFar.silent()))
          .push(ADA, Optional.of(remote.toString()), true);
    }
    this.owner = copy("owner", BOB, Own.OWNER);
  }

  Copy copy(String name, Author author, Own role) throws IOException {
    Path target = folder.resolve(name);
    new Copying(connection(HowFar.silent())).copy(remote.toString(), target, new CopyRole(role));
    return new Copy(new WorkspaceFolders(target), author);
  }
}
