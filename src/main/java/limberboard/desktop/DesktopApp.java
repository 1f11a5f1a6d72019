package limberboard.desktop;

import limberboard.library.WorkspaceFolders;

/** Opens the window. */
public final class DesktopApp {
  private DesktopApp() {}

  /**
   * Opens the window on a workspace. Returns at once; the program goes on until the window is
   * closed. Called once, from any thread but the event thread.
   */
  public static void open(WorkspaceFolders folders) {
    new DesktopStart(folders).start();
  }
}
