package limberboard.desktop.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveChooserTest {
  @TempDir Path folder;
  private final List<String> asked = new ArrayList<>();
  private final List<String> told = new ArrayList<>();

  @BeforeEach
  void display() {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(), "There is no display, so no dialog is tested.");
  }

  private SaveChooser chooser(boolean yes) {
    SaveChooser chooser =
        new SaveChooser(
            ".pdf",
            question -> {
              asked.add(question);
              return yes;
            });
    chooser.addActionListener(e -> told.add(e.getActionCommand()));
    return chooser;
  }

  @Test
  void aMistypedFolderIsMadeOnlyWhenThatIsWanted() {
    Path file = folder.resolve("mistyped/sheet.pdf");
    SaveChooser no = chooser(false);
    no.setSelectedFile(file.toFile());
    no.approveSelection();
    assertThat(asked)
        .containsExactly("There is no folder " + folder.resolve("mistyped") + ". Make it?");
    assertThat(told).as("one chooses on").isEmpty();
    assertThat(file.getParent()).doesNotExist();
    SaveChooser yes = chooser(true);
    yes.setSelectedFile(file.toFile());
    yes.approveSelection();
    assertThat(told).containsExactly("ApproveSelection");
    assertThat(file.getParent()).isDirectory();
  }

  @Test
  void aFileThatIsThereIsReplacedOnlyWhenThatIsWanted() throws IOException {
    Files.writeString(folder.resolve("sheet.pdf"), "old");
    SaveChooser no = chooser(false);
    no.setSelectedFile(folder.resolve("sheet").toFile());
    no.approveSelection();
    assertThat(asked).containsExactly("sheet.pdf is already there. Replace it?");
    assertThat(told).isEmpty();
    assertThat(no.file()).isEqualTo(folder.resolve("sheet.pdf"));
    SaveChooser yes = chooser(true);
    yes.setSelectedFile(folder.resolve("sheet.pdf").toFile());
    yes.approveSelection();
    assertThat(told).containsExactly("ApproveSelection");
  }
}
