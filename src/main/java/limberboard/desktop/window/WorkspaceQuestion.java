package limberboard.desktop.window;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import limberboard.library.NewWorkspace;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.WorkspaceFolders;

/** Asks for a workspace: one that is there, or a new one. For the event thread only. */
public final class WorkspaceQuestion {
  private static final String MAKE = "Make a new one there";
  private static final String OTHER = "Choose another folder";

  private final Component above;

  /** Asks above this component. */
  public WorkspaceQuestion(Component above) {
    this.above = above;
  }

  /**
   * Asks for a folder, until it is a workspace or the question is put away.
   *
   * @param start the folder to begin in
   */
  public Optional<WorkspaceFolders> ask(Path start) {
    Optional<Path> folder = folder(start, "Open workspace");
    while (folder.isPresent()) {
      Optional<WorkspaceFolders> found = workspace(folder.get());
      if (found.isPresent()) {
        return found;
      }
      switch (noWorkspace(folder.get())) {
        case 0:
          return make(folder.get());
        case 1:
          folder = folder(folder.get(), "Open workspace");
          break;
        default:
          return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Asks for a folder, and makes a workspace in it. */
  public Optional<WorkspaceFolders> askNew(Path start) {
    return folder(start, "Make a new workspace in").flatMap(this::make);
  }

  private Optional<Path> folder(Path start, String title) {
    JFileChooser chooser = new JFileChooser(start.toFile());
    chooser.setDialogTitle(title);
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    chooser.setApproveButtonText("Open");
    return chooser.showOpenDialog(above) == JFileChooser.APPROVE_OPTION
        ? Optional.of(chooser.getSelectedFile().toPath())
        : Optional.empty();
  }

  private static Optional<WorkspaceFolders> workspace(Path folder) {
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    return Files.isDirectory(folders.articles()) ? Optional.of(folders) : Optional.empty();
  }

  private int noWorkspace(Path folder) {
    String[] answers = {MAKE, OTHER, "Cancel"};
    return JOptionPane.showOptionDialog(
        above,
        folder + "\nis no workspace: it has no folder “articles”.",
        "No workspace",
        JOptionPane.DEFAULT_OPTION,
        JOptionPane.WARNING_MESSAGE,
        null,
        answers,
        OTHER);
  }

  private Optional<WorkspaceFolders> make(Path folder) {
    try {
      return Optional.of(NewWorkspace.in(folder));
    } catch (IOException e) {
      JOptionPane.showMessageDialog(
          above,
          "No workspace was made in\n" + folder + "\n" + FileTrouble.reason(e) + ".",
          "Not made",
          JOptionPane.WARNING_MESSAGE);
      return Optional.empty();
    }
  }
}
