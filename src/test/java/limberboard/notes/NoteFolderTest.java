package limberboard.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import limberboard.library.LibraryReader;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quick notes are files of their own, and none is ever lost. */
class NoteFolderTest {
  private static final LocalDateTime NINE = LocalDateTime.of(2026, 5, 20, 9, 15, 30);
  @TempDir Path folder;
  private WorkspaceFolders folders;
  private NoteFolder notes;

  @BeforeEach
  void begin() throws IOException {
    folders = NewWorkspace.in(folder.resolve("yard"));
    notes = new NoteFolder(folders);
  }

  private QuickNote add(String text) throws IOException {
    return notes.add(NINE, Optional.of("knots"), Optional.of("dunlin"), Optional.empty(), text);
  }

  @Test
  void aNoteIsAFileWithAHeader() throws IOException {
    add("The bead is too short.\n\n--- says the owner: yes");
    assertThat(folders.root().resolve("notes/2026-05-20-1.md"))
        .hasContent(
            "---\nwritten: 2026-05-20T09:15\npage: knots\nboat: dunlin\n---\n"
                + "The bead is too short.\n\n--- says the owner: yes\n");
    assertThat(notes.waiting().get(0).text())
        .isEqualTo("The bead is too short.\n\n--- says the owner: yes");
    assertThat(new LibraryReader(folders).read().problems()).as("it is no page").isEmpty();
  }

  @Test
  void notesOfOneMomentAreAllKept() throws IOException {
    add("one");
    add("two");
    assertThat(notes.waiting()).extracting(QuickNote::text).containsExactly("one", "two");
    assertThat(notes.waiting()).extracting(QuickNote::id).doesNotHaveDuplicates();
  }

  @Test
  void anEndedNoteIsKeptWithItsEndAndItsNumberIsNotUsedAgain() throws IOException {
    QuickNote note = add("one");
    notes.end(note, LocalDate.of(2026, 5, 21), QuickNote.How.DROPPED);
    assertThat(notes.waiting()).isEmpty();
    assertThat(notes.ended().get(0).end())
        .contains(new QuickNote.End(LocalDate.of(2026, 5, 21), QuickNote.How.DROPPED));
    assertThat(add("two").id()).isEqualTo("2026-05-20-2");
    notes.resume(notes.ended().get(0));
    assertThat(notes.waiting()).extracting(QuickNote::text).containsExactly("one", "two");
    assertThat(notes.ended()).isEmpty();
  }

  @Test
  void aNoteThatEndedJustBeforeAStopIsThereOnce() throws IOException {
    QuickNote note = add("one");
    Path file = folders.root().resolve("notes/2026-05-20-1.md");
    String text = Files.readString(file);
    notes.end(note, LocalDate.of(2026, 5, 21), QuickNote.How.WORKED_IN);
    Files.writeString(file, text);
    assertThat(notes.waiting()).isEmpty();
    assertThat(notes.ended()).hasSize(1);
  }

  @Test
  void aCopyOfThePhotoIsKept() throws IOException {
    Path photo = Files.write(folder.resolve("IMG 1.JPG"), new byte[] {1, 2, 3});
    QuickNote note =
        notes.add(NINE, Optional.empty(), Optional.empty(), Optional.of(photo), "Look");
    Files.delete(photo);
    assertThat(notes.picture(note).orElseThrow()).hasBinaryContent(new byte[] {1, 2, 3});
    notes.end(note, LocalDate.of(2026, 5, 21), QuickNote.How.WORKED_IN);
    assertThat(notes.picture(notes.ended().get(0))).isPresent();
  }

  @Test
  void whatIsNoPhotoIsRefusedAndNothingIsKept() throws IOException {
    Path other = Files.writeString(folder.resolve("run.sh"), "no");
    assertThatThrownBy(
            () -> notes.add(NINE, Optional.empty(), Optional.empty(), Optional.of(other), "Look"))
        .isInstanceOf(NoteTrouble.class)
        .hasMessageContaining("is no photo");
    assertThat(notes.waiting()).isEmpty();
  }

  @Test
  void aFileWrittenOtherwiseIsANoteWithAllItHolds() throws IOException {
    Files.createDirectories(folders.root().resolve("notes"));
    Files.writeString(folders.root().resolve("notes/mine.md"), "just words: {");
    Files.writeString(
        folders.root().resolve("notes/other.md"),
        "---\nwritten: soon\npicture: ../../secret.png\n---\nWords\n");
    List<QuickNote> waiting = notes.waiting();
    assertThat(waiting).extracting(QuickNote::id).containsExactly("mine", "other");
    assertThat(waiting.get(0).text()).isEqualTo("just words: {");
    assertThat(waiting.get(1).text()).contains("written: soon").contains("Words");
    assertThat(waiting.get(1).picture()).isEmpty();
  }
}
