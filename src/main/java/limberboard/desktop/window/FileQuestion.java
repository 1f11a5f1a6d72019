package limberboard.desktop.window;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;
import limberboard.desktop.base.Memory;

/** Asks where a file is to be written, beginning where the last one went. */
public final class FileQuestion {
  private static final String FOLDER = "save-folder";
  private final Memory memory;

  /** A question that remembers the folder. */
  public FileQuestion(Memory memory) {
    this.memory = memory;
  }

  /**
   * Asks for a file.
   *
   * @param suggested a file name; its ending says what kind of file it is, and what is chosen gets
   *     the same ending
   * @return empty when nothing is to be written
   */
  public Optional<Path> ask(String suggested) {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    String ending = suggested.substring(suggested.lastIndexOf('.') + 1);
    String kind = ending.toUpperCase(Locale.ROOT);
    SaveChooser chooser = new SaveChooser("." + ending);
    chooser.setName("save-chooser");
    chooser.setDialogTitle("Save as " + kind);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " files", ending));
    folder().ifPresent(chooser::setCurrentDirectory);
    chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggested));
    if (chooser.showSaveDialog(window) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path file = chooser.file();
    Optional.ofNullable(file.getParent())
        .ifPresent(folder -> memory.remember(FOLDER, folder.toString()));
    return Optional.of(file);
  }

  /** Where the last file went, if it is still there. */
  private Optional<File> folder() {
    try {
      return memory.text(FOLDER).map(text -> Path.of(text).toFile()).filter(File::isDirectory);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
