package limberboard.desktop.window;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Predicate;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/**
 * Chooses a file to write. A folder that is not there is made only when that is wanted, and a file
 * that is there is replaced only when that is; otherwise one chooses on.
 */
final class SaveChooser extends JFileChooser {
  private final String ending;
  private final transient Predicate<String> sure;

  /**
   * A chooser.
   *
   * @param ending what the file's name ends with, with its dot
   */
  SaveChooser(String ending) {
    this.ending = ending;
    this.sure = this::confirm;
  }

  /**
   * A chooser that asks somebody else.
   *
   * @param sure answers a question by yes or no
   */
  SaveChooser(String ending, Predicate<String> sure) {
    this.ending = ending;
    this.sure = sure;
  }

  /** The file that is chosen, with its ending. */
  Path file() {
    Path chosen = getSelectedFile().toPath();
    String name = chosen.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(ending)
        ? chosen
        : chosen.resolveSibling(name + ending);
  }

  @Override
  public void approveSelection() {
    File chosen = getSelectedFile();
    if (chosen == null || chosen.toPath().getFileName() == null) {
      return;
    }
    if (chosen.isDirectory()) {
      setCurrentDirectory(chosen);
      return;
    }
    if (hasFolder() && mayReplace()) {
      super.approveSelection();
    }
  }

  private boolean hasFolder() {
    Path folder = file().toAbsolutePath().getParent();
    if (Files.isDirectory(folder)) {
      return true;
    }
    if (!sure.test("There is no folder " + folder + ". Make it?")) {
      return false;
    }
    try {
      Files.createDirectories(folder);
      return true;
    } catch (IOException e) {
      JOptionPane.showMessageDialog(
          this,
          "The folder " + folder + " cannot be made. Choose another one.",
          getDialogTitle(),
          JOptionPane.WARNING_MESSAGE);
      return false;
    }
  }

  private boolean mayReplace() {
    Path file = file();
    return !Files.exists(file) || sure.test(file.getFileName() + " is already there. Replace it?");
  }

  private boolean confirm(String question) {
    return JOptionPane.showConfirmDialog(
            this, question, getDialogTitle(), JOptionPane.YES_NO_OPTION)
        == JOptionPane.YES_OPTION;
  }
}
