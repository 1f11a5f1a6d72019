package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Notices;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.history.Author;
import limberboard.history.Beginning;
import limberboard.history.GitRun;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was cut short is brought to its end when a workspace is opened, and that is said. */
class CutShortTest {
  private static final String NEW = "articles/topics/new.md";
  @TempDir Path folder;
  private final Notices notices = new Notices();

  private void write(WorkspaceFolders folders, String file, String text) throws IOException {
    Path at = folders.root().resolve(file);
    Files.createDirectories(at.getParent());
    Files.writeString(at, text);
  }

  private Optional<String> said(WorkspaceFolders folders) {
    new CutShort(folders).finish(Steps.atOnce(notices), notices);
    return notices.current().map(Notices.Notice::text);
  }

  @Test
  void nothingIsSaidWhereNothingWasCutShort() {
    assertThat(said(SmallWorkspace.copyTo(folder))).isEmpty();
  }

  @Test
  void anImportWhoseFilesAreWholeIsFinished() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    write(folders, ".import/files/" + NEW, "---\ntitle: New\n---\n");
    write(folders, ".import/ready", NEW + "\n");
    assertThat(said(folders)).contains("An import that was cut short has come to its end: 1 file.");
    assertThat(folders.root().resolve(NEW)).hasContent("---\ntitle: New\n---\n");
    assertThat(folders.root().resolve(".import")).doesNotExist();
  }

  @Test
  void anImportThatIsNotWholeYetIsLeftToWhoeverIsAtIt() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    write(folders, ".import/files/" + NEW, "---\ntitle: New\n---\n");
    assertThat(said(folders)).isEmpty();
    assertThat(folders.root().resolve(".import/files/" + NEW)).exists();
    assertThat(folders.root().resolve(NEW)).doesNotExist();
  }

  @Test
  void aRenamingIsFinished() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    write(folders, ".renaming", "kind: procedures\nfrom: seal-vent\nto: seal-the-vent\n");
    assertThat(said(folders)).contains("A renaming that was cut short has come to its end.");
    assertThat(folders.articles().resolve("procedures/seal-the-vent.md")).exists();
    assertThat(folders.articles().resolve("procedures/seal-vent.md")).doesNotExist();
  }

  @Test
  void aPullIsFinished() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Author author = new Author("Ada", "ada@example.org");
    Beginning.begin(folders, author);
    GitRun git = new GitRun(folders.root());
    String before = git.run("rev-parse", "HEAD").good().strip();
    write(folders, NEW, "---\ntitle: New\n---\n");
    try (HistoryFolder place = HistoryFolder.of(folders).orElseThrow()) {
      new Recorder(place).record(List.of(NEW), "New", author);
    }
    String after = git.run("rev-parse", "HEAD").good().strip();
    git.run("reset", "--hard", before).good();
    assertThat(folders.root().resolve(NEW)).doesNotExist();
    write(folders, ".git/limberboard-pull", before + " " + after + "\n");
    assertThat(said(folders)).contains("A pull that was cut short has come to its end.");
    assertThat(folders.root().resolve(NEW)).hasContent("---\ntitle: New\n---\n");
    assertThat(git.run("rev-parse", "HEAD").good().strip()).isEqualTo(after);
  }
}
