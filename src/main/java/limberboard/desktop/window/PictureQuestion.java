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

/** Asks which pictures are to be put into a page, beginning where the last ones were. */
public final class PictureQuestion {
  private static final String FOLDER = "picture-folder";
  private final Memory memory;

  /** A question that remembers the folder. */
  public PictureQuestion(Memory memory) {
    this.memory = memory;
  }

  /** Asks for files; none when nothing is to be put in. */
  public List<Path> ask() {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    JFileChooser chooser = new JFileChooser();
    chooser.setName("picture-chooser");
    chooser.setDialogTitle("Put pictures in");
    chooser.setMultiSelectionEnabled(true);
    chooser.setFileFilter(
        new FileNameExtensionFilter("Pictures (.svg, .png, .jpg)", "svg", "png", "jpg", "jpeg"));
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
