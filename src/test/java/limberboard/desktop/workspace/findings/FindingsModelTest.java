package limberboard.desktop.workspace.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Memory;
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
  private FindingsOutside outside;
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
    outside =
        new FindingsOutside(
            folders,
            session,
            Steps.atOnce(notices),
            Steps.atOnce(notices),
            Guard.NONE,
            notices,
            new Memory(new Forgetful()),
            this::readAgain);
    model = new FindingsModel(outside);
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
    assertThat(model.shown())
        .isEqualTo(model.all().stream().filter(each -> each.kind().isAmongAll()).toList());
    assertThat(model.all()).anyMatch(each -> !each.kind().isAmongAll());
  }

  @Test
  void theProofreadersFindingsStandAmongThemAndACertainOneIsMended() throws IOException {
    Files.writeString(
        folders.articles().resolve("proofreading.yaml"),
        "cautions: [{words: [bed it], carry: [gas]}]\n"
            + "needs: [{words: [bed it], tools: [torch]}]\n");
    readAgain();
    WorkspaceFinding caution = about("add gas to cautions");
    assertThat(caution.line()).isEqualTo(9);
    assertThat(caution.repair().orElseThrow().words())
        .isEqualTo("Adds gas to cautions in the header of articles/procedures/seal-vent.md.");
    String before = Files.readString(page);
    model.repair(caution);
    String with = before.replace("}\n---\n", "}\ncautions: [gas]\n---\n");
    assertThat(Files.readString(page)).isEqualTo(with);
    assertThat(model.all()).noneMatch(each -> each.has("add gas to cautions"));
    model.repair(about("add torch to tools"));
    assertThat(Files.readString(page))
        .isEqualTo(with.replace("[gas]\n---\n", "[gas]\ntools: [torch]\n---\n"));
    Files.writeString(
        page,
        Files.readString(page)
            .replace("[torch]\n", "[]\nanswered: [{rule: no-tool, about: torch, why: light}]\n"));
    readAgain();
    assertThat(model.all()).noneMatch(each -> each.has("add torch to tools"));
  }

  @Test
  void pagesReadLongAgoOrChangedSinceComeUpAndOneActionNotesThatOneIsRead() throws IOException {
    readAgain();
    assertThat(model.count(FindingKind.AGAIN)).isZero();
    int unread = model.count(FindingKind.UNREAD);
    String before = Files.readString(page);
    ReadMarking marking = new ReadMarking(outside);
    marking.mark("articles/procedures/seal-vent.md", "Seal the vent", "a rigger");
    assertThat(model.count(FindingKind.UNREAD)).isEqualTo(unread - 1);
    assertThat(Files.readString(page)).contains("read: {on: 2026-05-20, by: \"a rigger\", of: ");
    assertThat(marking.lastReader()).isEqualTo("a rigger");
    String noted = Files.readString(page);

    Files.writeString(page, noted.replace("2026-05-20", "2024-05-20"));
    readAgain();
    assertThat(about("Seal the vent Was last read").right())
        .isEqualTo("Was last read in full on 20 May 2024 by a rigger.");
    Files.writeString(page, noted.replace("2026-05-20", "2024-05-21"));
    readAgain();
    assertThat(model.count(FindingKind.AGAIN)).isZero();
    Files.writeString(folders.articles().resolve("proofreading.yaml"), "read-again: P1Y\n");
    readAgain();
    assertThat(model.count(FindingKind.AGAIN)).isEqualTo(1);
    Files.writeString(page, noted + "More.\n");
    readAgain();
    assertThat(about("Seal the vent Has changed").right())
        .startsWith("Has changed since it was read in full");

    Files.writeString(page, before);
    readAgain();
    marking.mark("articles/procedures/seal-vent.md", "Seal the vent", "a rigger");
    notices.current().orElseThrow().offers().get(0).action().run();
    assertThat(Files.readString(page)).isEqualTo(before);
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
