package limberboard.desktop.window;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks where a file is to be written. */
public final class FileQuestion {
  private FileQuestion() {}

  /**
   * Asks for a file.
   *
   * @param suggested a file name; its ending says what kind of file it is, and what is chosen gets
   *     the same ending
   * @return empty when nothing is to be written
   */
  public static Optional<Path> ask(String suggested) {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    String ending = suggested.substring(suggested.lastIndexOf('.') + 1);
    String kind = ending.toUpperCase(Locale.ROOT);
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("Save as " + kind);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " files", ending));
    chooser.setSelectedFile(new File(suggested));
    if (chooser.showSaveDialog(window) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path file = withEnding(chooser.getSelectedFile().toPath(), "." + ending);
    return file.toFile().exists() && !mayReplace(window, file, "Save as " + kind)
        ? Optional.empty()
        : Optional.of(file);
  }

  private static Path withEnding(Path file, String ending) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(ending)
        ? file
        : file.resolveSibling(name + ending);
  }

  private static boolean mayReplace(Window window, Path file, String title) {
    return JOptionPane.showConfirmDialog(
            window,
            file.getFileName() + " is already there. Replace it?",
            title,
            JOptionPane.OK_CANCEL_OPTION)
        == JOptionPane.OK_OPTION;
  }
}
