package limberboard.writing.save;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.TestWorkspace;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.writing.PageText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageFileTest {
  private static final String PATH = "articles/topics/bends.md";
  private static final PageText FIRST =
      new PageText("\uFEFF---\r\ntitle: Bends\r\n---\r\nOne.\r\nTwo.\n");

  @TempDir Path folder;
  private WorkspaceFolders folders;
  private PageFile file;

  @BeforeEach
  void make() {
    folders = new TestWorkspace(folder.resolve("yard")).folders();
    file = new PageFile(folders, PATH);
  }

  private Path path() {
    return folders.root().resolve(PATH);
  }

  private Optional<PageText> opened() {
    return ((PageFile.Ready) file.open()).page();
  }

  @Test
  void whatIsSavedIsThereToTheByteAndNothingElseIs() throws IOException {
    assertThat(opened()).isEmpty();
    assertThat(file.save(Optional.empty(), FIRST)).isEqualTo(new SaveOutcome.Saved(FIRST));
    assertThat(Files.readAllBytes(path())).isEqualTo(FIRST.bytes());
    assertThat(opened()).contains(FIRST);
    PageText second = FIRST.edited(FIRST.plain().replace("Two", "Three"));
    Files.setPosixFilePermissions(path(), PosixFilePermissions.fromString("rw-rw-r--"));
    assertThat(file.save(opened(), second)).isInstanceOf(SaveOutcome.Saved.class);
    assertThat(Files.readAllBytes(path())).isEqualTo(second.bytes());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path())))
        .isEqualTo("rw-rw-r--");
    try (Stream<Path> beside = Files.list(path().getParent())) {
      assertThat(beside.map(each -> each.getFileName().toString())).containsExactly("bends.md");
    }
  }

  @Test
  void whatOthersWroteMeanwhileIsShownAndNeverWrittenOver() throws IOException {
    file.save(Optional.empty(), FIRST);
    PageText theirs = FIRST.edited(FIRST.plain().replace("One.", "One, by others."));
    Files.write(path(), theirs.bytes());
    PageText mine = FIRST.edited(FIRST.plain() + "Three.\n");
    SaveOutcome.Changed changed = (SaveOutcome.Changed) file.save(Optional.of(FIRST), mine);
    assertThat(changed.mine()).isEqualTo(mine);
    assertThat(changed.theirs()).contains(theirs);
    assertThat(changed.differences())
        .containsExactly(
            new LineDifference(3, List.of("One."), 3, List.of("One, by others.")),
            new LineDifference(5, List.of("Three."), 5, List.of()));
    assertThat(Files.readAllBytes(path())).isEqualTo(theirs.bytes());
    assertThat(file.save(Optional.of(theirs), mine)).isInstanceOf(SaveOutcome.Saved.class);
  }

  @Test
  void aPageThatCameOrWentMeanwhileHasChanged() throws IOException {
    file.save(Optional.empty(), FIRST);
    PageText other = new PageText("other\n");
    assertThat(file.save(Optional.empty(), other)).isInstanceOf(SaveOutcome.Changed.class);
    Files.delete(path());
    SaveOutcome.Changed gone = (SaveOutcome.Changed) file.save(Optional.of(FIRST), other);
    assertThat(gone.theirs()).isEmpty();
    assertThat(path()).doesNotExist();
  }

  @Test
  void theSameTextTwiceIsNoConflict() {
    file.save(Optional.empty(), FIRST);
    assertThat(file.save(Optional.empty(), FIRST)).isInstanceOf(SaveOutcome.Saved.class);
  }

  @Test
  void whatCannotBeReadOrWrittenIsSaidAndStays() throws IOException {
    Files.createDirectories(path().getParent());
    byte[] latin = "title: caf\u00e9".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(path(), latin);
    PageFile.Unreadable bad = (PageFile.Unreadable) file.open();
    assertThat(bad.problem().toString()).contains(PATH, "is not UTF-8 text");
    assertThat(file.save(Optional.empty(), FIRST)).isInstanceOf(SaveOutcome.Refused.class);
    assertThat(Files.readAllBytes(path())).isEqualTo(latin);
    PageFile out = new PageFile(folders, "articles/topics/out.md");
    Path secret = Files.writeString(folder.resolve("secret.md"), "secret");
    Files.createSymbolicLink(folders.root().resolve("articles/topics/out.md"), secret);
    assertThat(out.open()).isInstanceOf(PageFile.Unreadable.class);
    assertThat(out.save(Optional.empty(), FIRST)).isInstanceOf(SaveOutcome.Refused.class);
    assertThat(Files.readString(secret)).isEqualTo("secret");
  }

  @Test
  void deletingSparesWhatOthersChanged() throws IOException {
    file.save(Optional.empty(), FIRST);
    assertThat(file.delete(new PageText("older"))).isInstanceOf(SaveOutcome.Changed.class);
    assertThat(path()).exists();
    assertThat(file.delete(FIRST)).isInstanceOf(SaveOutcome.Saved.class);
    assertThat(path()).doesNotExist();
  }

  @Test
  void keptTextsAreOfferedBackUntilTheyAreSaved() throws IOException {
    UserFolders user =
        new UserFolders(folder.resolve("c"), folder.resolve("s"), folder.resolve("k"));
    Instant at = Instant.parse("2026-11-29T10:00:00Z");
    file.save(Optional.empty(), FIRST);
    PageText typed = new PageText("\uFEFFtyped\r\n\r\npage: no head\n");
    KeptTexts crashed = new KeptTexts(user, folders);
    crashed.keep(KeptText.of(PATH, Optional.of(FIRST), at, new PageText("earlier")));
    crashed.keep(KeptText.of(PATH, Optional.of(FIRST), at, typed));
    assertThat(crashed.left(folders)).as("its own sitting still types").isEmpty();
    KeptTexts other = new KeptTexts(user, folders);
    other.keep(KeptText.of(PATH, Optional.of(FIRST), at.plusSeconds(1), new PageText("second")));
    KeptTexts next = new KeptTexts(user, folders);
    List<KeptTexts.Offered> left = next.left(folders);
    assertThat(left).hasSize(2);
    assertThat(left.get(0).kept().text().text()).isEqualTo("second");
    assertThat(left.get(1).kept()).isEqualTo(KeptText.of(PATH, Optional.of(FIRST), at, typed));
    assertThat(left.get(1).kept().goesOnFrom(opened())).isTrue();
    file.save(Optional.of(FIRST), typed);
    assertThat(next.left(folders)).as("saved meanwhile").hasSize(1);
    assertThat(left.get(0).kept().goesOnFrom(opened())).isFalse();
    next.forget(left.get(0));
    crashed.forget(PATH);
    assertThat(next.left(folders)).isEmpty();
  }
}
