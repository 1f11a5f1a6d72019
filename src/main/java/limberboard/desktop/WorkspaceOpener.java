package limberboard.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import limberboard.desktop.base.Recent;
import limberboard.desktop.window.MainWindow;
import limberboard.desktop.window.WorkspaceQuestion;
import limberboard.library.file.WorkspaceFolders;

/** Opens another workspace in place of the one that is open, once its window lets itself close. */
final class WorkspaceOpener implements Opener {
  private final WorkspaceFolders open;
  private final MainWindow window;
  private final Recent recent;
  private final Consumer<WorkspaceFolders> next;

  /**
   * An opener.
   *
   * @param open the workspace that is open
   * @param window its window
   * @param recent workspaces opened lately
   * @param next opens the other one in place of this one
   */
  WorkspaceOpener(
      WorkspaceFolders open, MainWindow window, Recent recent, Consumer<WorkspaceFolders> next) {
    this.open = open;
    this.window = window;
    this.recent = recent;
    this.next = next;
  }

  @Override
  public void ask() {
    new WorkspaceQuestion(window.frame()).ask(open.root()).ifPresent(this::take);
  }

  @Override
  public void open(Path root) {
    take(new WorkspaceFolders(root));
  }

  private void take(WorkspaceFolders wanted) {
    if (!wanted.equals(open)) {
      next.accept(wanted);
    }
  }

  @Override
  public List<Path> recent() {
    return recent.all().stream().filter(root -> !root.equals(open.root())).toList();
  }
}
