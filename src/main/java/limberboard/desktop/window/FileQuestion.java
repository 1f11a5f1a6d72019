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
   * Asks for a PDF file.
   *
   * @param suggested a file name
   * @return empty when nothing is to be written
   */
  public static Optional<Path> askPdf(String suggested) {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("Save as PDF");
    chooser.setFileFilter(new FileNameExtensionFilter("PDF files", "pdf"));
    chooser.setSelectedFile(new File(suggested));
    if (chooser.showSaveDialog(window) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    Path file = withEnding(chooser.getSelectedFile().toPath());
    return file.toFile().exists() && !mayReplace(window, file)
        ? Optional.empty()
        : Optional.of(file);
  }

  private static Path withEnding(Path file) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(".pdf")
        ? file
        : file.resolveSibling(name + ".pdf");
  }

  private static boolean mayReplace(Window window, Path file) {
    return JOptionPane.showConfirmDialog(
            window,
            file.getFileName() + " is already there. Replace it?",
            "Save as PDF",
            JOptionPane.OK_CANCEL_OPTION)
        == JOptionPane.OK_OPTION;
  }
}
