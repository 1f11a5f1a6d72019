package limberboard.letters.inbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.letters.answer.DraftLine;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LetterFolderTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 29);
  private static final String MAIL =
      "From: Ada <ada@example.org>\nSubject: Wet berth\n\nIt is wet.\n";
  @TempDir Path root;
  private WorkspaceFolders folders;
  private LetterFolder folder;

  @BeforeEach
  void open() {
    folders = new WorkspaceFolders(root);
    folder = new LetterFolder(folders);
  }

  private String add(String name, String text) throws IOException {
    return folder.add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private Path file(String name) {
    return folders.letters().resolve(name);
  }

  @Test
  void thereNeedBeNoFolder() throws IOException {
    assertThat(folder.list()).isEmpty();
  }

  @Test
  void listsLettersTheLatestFirstAndNothingElse() throws IOException {
    String old = add("old.eml", MAIL);
    String fresh = add("new.txt", "It is wet.");
    Files.setLastModifiedTime(file(old), FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
    Files.writeString(file("old.yaml"), "kind: fault\n");
    Files.writeString(file("senders"), "");
    folder.change(fresh, note -> note.in(LetterState.CLOSED, DAY));
    assertThat(folder.list()).extracting(LetterFile::name).containsExactly(fresh, old);
    assertThat(folder.list())
        .extracting(file -> file.noted().isPresent())
        .containsExactly(true, false);
  }

  @Test
  void readsHeadAndLetter() throws IOException {
    String name = add("wet berth.eml", MAIL);
    assertThat(name).isEqualTo("wet-berth.eml");
    assertThat(folder.head(name).subject()).isEqualTo("Wet berth");
    assertThat(folder.read(name).own()).isEqualTo("It is wet.");
    assertThat(folder.read(add("p.txt", "Dry now.")).own()).isEqualTo("Dry now.");
  }

  @Test
  void noLetterIsOverwrittenAndTheSameIsNotPutThereTwice() throws IOException {
    String first = add("a.eml", MAIL);
    assertThat(add("a.eml", MAIL)).isEqualTo(first);
    String other = add("a.eml", MAIL + "More.\n");
    assertThat(other).isEqualTo("a-2.eml");
    assertThat(Files.readString(file(first))).isEqualTo(MAIL);
  }

  @Test
  void aNameCannotLeaveTheFolder() throws IOException {
    String name = add("../../etc/pass wd.eml", MAIL);
    assertThat(name).isEqualTo("etc-pass-wd.eml");
    assertThat(file(name)).exists();
    assertThat(add("…", MAIL)).isEqualTo("letter.eml");
  }

  @Test
  void whatIsNotedIsThereAgainToTheLetter() throws IOException {
    String name = add("a.eml", MAIL);
    LetterSaid said =
        LetterSaid.NOTHING
            .of(Optional.of("a tarnwick-30 of 2017 in fresh water"))
            .answeredAs(Optional.of("no-fault booking"))
            .telling(List.of("wet-locker"))
            .dangers(Optional.of(List.of()))
            .answering("wet-locker", "when", Optional.of("no"))
            .answering("wet-locker", "clip", Optional.of(LetterSaid.CANNOT_TELL));
    KeptEdit edit =
        new KeptEdit(
            "wet-locker/likely",
            "greeting",
            "Two \"lines\": # one\n\n+ and . a\tthird \u2028\\ é 😀\u0007",
            List.of(
                new DraftLine(DraftLine.Kind.HEADING, "A heading"),
                new DraftLine(DraftLine.Kind.ITEM, "x".repeat(9_500)),
                new DraftLine(DraftLine.Kind.PARAGRAPH, "")));
    KeptEdit gone = new KeptEdit("closing", "", "", List.of());
    LetterNote note =
        new LetterNote(LetterState.WAITING, Optional.of(DAY), said, List.of(edit, gone));
    assertThat(folder.change(name, before -> note)).isEmpty();
    assertThat(folder.note(name)).isEqualTo(new LetterFolder.Noted(note, Optional.empty()));
    assertThat(Files.readString(file("a.eml"))).isEqualTo(MAIL);
  }

  @Test
  void changesGoOntoWhatTheFileHoldsAtThatMoment() throws IOException {
    String name = add("a.eml", MAIL);
    new LetterFolder(folders)
        .change(name, note -> note.saying(note.said().of(Optional.of("knot"))));
    folder.change(name, note -> note.in(LetterState.ANSWERED, DAY));
    assertThat(folder.note(name).note().said().boat()).contains("knot");
    assertThat(folder.note(name).note().state()).isEqualTo(LetterState.ANSWERED);
  }

  @Test
  void aDamagedStateIsSaidWithItsLineAndNeverWrittenOver() throws IOException {
    String name = add("a.eml", MAIL);
    String damaged = "state: waiting\nsince: [\n";
    Files.writeString(file(name + ".state"), damaged);
    LetterFolder.Noted noted = folder.note(name);
    assertThat(noted.note().state()).isEqualTo(LetterState.NEW);
    assertThat(noted.problem().orElseThrow().toString())
        .startsWith("boats/letters/a.eml.state:")
        .contains("cannot be read as YAML");
    assertThat(folder.change(name, note -> note.in(LetterState.CLOSED, DAY))).isPresent();
    assertThat(Files.readString(file(name + ".state"))).isEqualTo(damaged);
  }

  @Test
  void whatIsNoStateAndNoKeyIsSaidAndTheRestIsRead() throws IOException {
    String name = add("a.eml", MAIL);
    Files.writeString(file(name + ".state"), "state: done\nboat: knot\ncolour: red\n");
    LetterFolder.Noted noted = folder.note(name);
    assertThat(noted.note().said().boat()).contains("knot");
    assertThat(noted.problem()).isPresent();
    assertThat(folder.change(name, note -> note)).isPresent();
  }

  @Test
  void bytesThatAreNoTextAreSaid() throws IOException {
    String name = add("a.eml", MAIL);
    Files.write(file(name + ".state"), new byte[] {(byte) 0xff, 0, 1});
    assertThat(folder.note(name).problem()).isPresent();
    assertThat(folder.change(name, note -> note.in(LetterState.CLOSED, DAY))).isPresent();
    assertThat(Files.readAllBytes(file(name + ".state"))).hasSize(3);
  }

  @Test
  void aLetterThatIsALinkOutOfTheWorkspaceIsNotRead() throws IOException {
    Path outside = Files.createTempFile("letter", ".eml");
    Files.writeString(outside, MAIL);
    add("a.eml", MAIL);
    Files.createSymbolicLink(file("b.eml"), outside);
    assertThatThrownBy(() -> folder.read("b.eml")).isInstanceOf(IOException.class);
    assertThat(folder.list()).hasSize(2);
    Files.delete(outside);
  }

  @Test
  void anAttachmentIsReadWhenAskedFor() throws IOException {
    String mail =
        """
        Subject: picture
        MIME-Version: 1.0
        Content-Type: multipart/mixed; boundary=b

        --b
        Content-Type: text/plain

        See the picture.
        --b
        Content-Type: image/png
        Content-Transfer-Encoding: base64
        Content-Disposition: attachment; filename=a.png

        aGVsbG8=
        --b--
        """;
    String name = add("a.eml", mail);
    assertThat(folder.attachment(name, 1, 100).map(String::new)).contains("hello");
    assertThat(folder.attachment(name, 1, 3)).isEmpty();
    assertThat(folder.attachment(name, 2, 100)).isEmpty();
    assertThat(folder.read(name).attachments()).hasSize(1);
  }
}
