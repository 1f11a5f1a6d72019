package limberboard.desktop.workspace.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.notes.QuickNote;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quick notes without their window. */
class NotesModelTest {
  @TempDir Path folder;
  private final Notices notices = new Notices();
  private WorkspaceFolders folders;
  private NotesModel model;

  @BeforeEach
  void open() {
    folders = SmallWorkspace.copyTo(folder);
    model =
        new NotesModel(
            new NotesOutside(
                folders,
                Steps.atOnce(notices),
                Guard.NONE,
                notices,
                SmallWorkspace.clock(),
                () -> NoteTies.NONE,
                file -> {}));
  }

  @Test
  void aNoteIsKeptAtOnceAndWaitsUntilItEnds() {
    model.add(
        "Say which cord",
        new NoteTies(Optional.of("seal-vent"), Optional.of("knot")),
        Optional.empty());
    assertThat(notices.current().orElseThrow().text()).isEqualTo("Noted.");
    assertThat(model.notes()).extracting(QuickNote::text).containsExactly("Say which cord");
    model.end(model.notes().get(0), QuickNote.How.WORKED_IN);
    assertThat(model.notes()).isEmpty();
    model.showDone(true);
    assertThat(model.notes()).hasSize(1);
    model.resume(model.notes().get(0));
    assertThat(model.waiting()).isEqualTo(1);
  }

  @Test
  void whatCannotBeKeptStandsThereAgain() throws IOException {
    Path other = Files.writeString(folder.resolve("words.txt"), "no photo");
    model.add("Look at this", NoteTies.NONE, Optional.of(other));
    assertThat(model.draft()).isEqualTo("Look at this");
    assertThat(notices.current().orElseThrow().text()).contains("words.txt is no photo");
    assertThat(model.waiting()).isZero();
  }

  @Test
  void anEmptyNoteIsNone() {
    model.add("  ", NoteTies.NONE, Optional.empty());
    assertThat(folders.root().resolve("notes")).doesNotExist();
  }
}
