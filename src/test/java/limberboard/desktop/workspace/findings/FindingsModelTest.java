package limberboard.desktop.workspace.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All findings in one list, filtered and mended, without a window. */
class FindingsModelTest {
  @TempDir Path folder;
  private final Notices notices = new Notices();
  private WorkspaceFolders folders;
  private Path page;
  private Session session;
  private FindingsModel model;

  @BeforeEach
  void open() throws IOException {
    folders = SmallWorkspace.copyTo(folder);
    page = folders.articles().resolve("procedures/seal-vent.md");
    Files.writeString(
        page,
        Files.readString(page)
            + "\nSee [it](tighten-hoze.md).\n\nSee [that](nothing-like-it-at-all.md).\n");
    session = new Session(SmallWorkspace.clock(), Optional.empty());
    model =
        new FindingsModel(
            new FindingsOutside(
                folders,
                session,
                Steps.atOnce(notices),
                Steps.atOnce(notices),
                Guard.NONE,
                notices,
                this::readAgain));
  }

  private void readAgain() {
    session.replace(SmallWorkspace.read(folders));
    model.look();
  }

  private WorkspaceFinding about(String words) {
    return model.all().stream().filter(each -> each.has(words)).findFirst().orElseThrow();
  }

  @Test
  void nothingIsSaidBeforeTheWorkspaceIsRead() {
    model.look();
    assertThat(model.all()).isEmpty();
    assertThat(model.hasLooked()).isFalse();
  }

  @Test
  void saysWhatIsBrokenAtItsLineAndFilters() throws IOException {
    readAgain();
    int line = (int) Files.readString(page).lines().count();
    WorkspaceFinding broken = about("nothing-like-it-at-all");
    assertThat(broken.kind()).isEqualTo(FindingKind.BROKEN);
    assertThat(broken.line()).isEqualTo(line);
    assertThat(broken.repair()).isEmpty();
    model.filter("tighten-HOZE nowhere");
    assertThat(model.shown()).containsExactly(about("tighten-hoze"));
    model.filter("");
    model.kind(Optional.of(FindingKind.WRITE));
    assertThat(model.shown()).allMatch(each -> each.kind() == FindingKind.WRITE);
    model.kind(Optional.empty());
    assertThat(model.shown()).isEqualTo(model.all());
  }

  @Test
  void aCertainRepairMendsTheFileAndTheFindingGoes() throws IOException {
    readAgain();
    String before = Files.readString(page);
    model.repair(about("tighten-hoze"));
    assertThat(Files.readString(page)).isEqualTo(before.replace("hoze", "hose"));
    assertThat(model.all()).noneMatch(each -> each.has("tighten-hoze"));
    assertThat(notices.current().orElseThrow().text()).startsWith("Mended: ");
  }

  @Test
  void whereTheFileHasChangedMeanwhileNothingIsWrittenAndThatIsSaid() throws IOException {
    readAgain();
    WorkspaceFinding finding = about("tighten-hoze");
    Files.writeString(page, "---\ntitle: Other\n---\n");
    model.repair(finding);
    assertThat(Files.readString(page)).isEqualTo("---\ntitle: Other\n---\n");
    assertThat(notices.current().orElseThrow().failure()).isTrue();
  }
}
