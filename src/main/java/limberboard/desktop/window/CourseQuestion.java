package limberboard.desktop.window;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;
import limberboard.desktop.base.Memory;

/** Asks which course is to be opened, and where the results of a class lie. */
public final class CourseQuestion {
  private static final String FOLDER = "drills-folder";
  private final Memory memory;

  /** A question that remembers the folder. */
  public CourseQuestion(Memory memory) {
    this.memory = memory;
  }

  /** Asks for the file of a course; empty when none is to be opened. */
  public Optional<Path> course() {
    JFileChooser chooser = chooser("Open a course");
    chooser.setFileFilter(new FileNameExtensionFilter("Courses (.yaml)", "yaml", "yml"));
    return ask(chooser);
  }

  /** Asks for the folder of results; empty when none is to be gathered. */
  public Optional<Path> results() {
    JFileChooser chooser = chooser("The folder with the class\u2019s results");
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    return ask(chooser);
  }

  private JFileChooser chooser(String title) {
    JFileChooser chooser = new JFileChooser();
    chooser.setName("drills-chooser");
    chooser.setDialogTitle(title);
    folder().ifPresent(chooser::setCurrentDirectory);
    return chooser;
  }

  private Optional<Path> ask(JFileChooser chooser) {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    if (chooser.showOpenDialog(window) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    memory.remember(FOLDER, chooser.getCurrentDirectory().toString());
    return Optional.of(chooser.getSelectedFile().toPath());
  }

  /** Where the last one was, if it is still there. */
  private Optional<File> folder() {
    try {
      return memory.text(FOLDER).map(text -> Path.of(text).toFile()).filter(File::isDirectory);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
