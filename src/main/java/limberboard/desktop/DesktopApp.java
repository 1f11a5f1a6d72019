package limberboard.desktop;

import limberboard.library.LastNet;
import limberboard.library.WorkspaceFolders;

/** Opens the window. */
public final class DesktopApp {
  private DesktopApp() {}

  /**
   * Opens the window on a workspace. Returns at once; the program goes on until the window is
   * closed. Called once, from any thread but the event thread.
   *
   * @param folders the workspace
   * @param net catches what nobody expected
   */
  public static void open(WorkspaceFolders folders, LastNet net) {
    new DesktopStart(folders, net).start();
  }
}
