package limberboard.desktop.window;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;
import limberboard.desktop.base.Memory;

/** Asks which letters are to be opened, beginning where the last ones were. */
public final class OpenQuestion {
  private static final String FOLDER = "open-folder";
  private final Memory memory;

  /** A question that remembers the folder. */
  public OpenQuestion(Memory memory) {
    this.memory = memory;
  }

  /** Asks for files; none when nothing is to be opened. */
  public List<Path> ask() {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    JFileChooser chooser = new JFileChooser();
    chooser.setName("open-chooser");
    chooser.setDialogTitle("Open letters");
    chooser.setMultiSelectionEnabled(true);
    chooser.setFileFilter(new FileNameExtensionFilter("Letters (.eml, .txt)", "eml", "txt"));
    folder().ifPresent(chooser::setCurrentDirectory);
    if (chooser.showOpenDialog(window) != JFileChooser.APPROVE_OPTION) {
      return List.of();
    }
    memory.remember(FOLDER, chooser.getCurrentDirectory().toString());
    return Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList();
  }

  /** Where the last ones were, if it is still there. */
  private Optional<File> folder() {
    try {
      return memory.text(FOLDER).map(text -> Path.of(text).toFile()).filter(File::isDirectory);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
