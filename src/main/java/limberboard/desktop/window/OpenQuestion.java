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

/** Asks which files of a kind are to be taken, beginning where the last ones were. */
public final class OpenQuestion {
  private final Memory memory;
  private final String name;
  private final String title;
  private final FileNameExtensionFilter files;

  private OpenQuestion(Memory memory, String name, String title, FileNameExtensionFilter files) {
    this.memory = memory;
    this.name = name;
    this.title = title;
    this.files = files;
  }

  /** Asks which letters are to be opened, and remembers the folder. */
  public static OpenQuestion letters(Memory memory) {
    return new OpenQuestion(
        memory,
        "open",
        "Open letters",
        new FileNameExtensionFilter("Letters (.eml, .txt)", "eml", "txt"));
  }

  /** Asks which pictures are to be put into a page, and remembers the folder. */
  public static OpenQuestion pictures(Memory memory) {
    return new OpenQuestion(
        memory,
        "picture",
        "Put pictures in",
        new FileNameExtensionFilter("Pictures (.svg, .png, .jpg)", "svg", "png", "jpg", "jpeg"));
  }

  private String remembered() {
    return name + "-folder";
  }

  /** Asks for files; none when nothing is to be taken. */
  public List<Path> ask() {
    Window window = KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow();
    JFileChooser chooser = new JFileChooser();
    chooser.setName(name + "-chooser");
    chooser.setDialogTitle(title);
    chooser.setMultiSelectionEnabled(true);
    chooser.setFileFilter(files);
    folder().ifPresent(chooser::setCurrentDirectory);
    if (chooser.showOpenDialog(window) != JFileChooser.APPROVE_OPTION) {
      return List.of();
    }
    memory.remember(remembered(), chooser.getCurrentDirectory().toString());
    return Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList();
  }

  /** Where the last ones were, if it is still there. */
  private Optional<File> folder() {
    try {
      return memory
          .text(remembered())
          .map(text -> Path.of(text).toFile())
          .filter(File::isDirectory);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
