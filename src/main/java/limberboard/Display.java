package limberboard;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.cli.Terminal;
import limberboard.desktop.DesktopApp;
import limberboard.desktop.Pictures;
import limberboard.library.WorkspaceFolders;

/** The window, as the terminal sees it: opened if there is a display. */
final class Display implements Terminal.Window {
  private boolean opened;

  @Override
  public boolean open(WorkspaceFolders folders) {
    if (isThere()) {
      opened = true;
      DesktopApp.open(folders);
    }
    return opened;
  }

  @Override
  public boolean pictures(WorkspaceFolders folders, LocalDate today, Path to) throws IOException {
    if (!isThere()) {
      return false;
    }
    new Pictures(folders, today).make(to);
    return true;
  }

  /** Whether a window was opened, which goes on after the command line has been dealt with. */
  boolean opened() {
    return opened;
  }

  private static boolean isThere() {
    try {
      return !GraphicsEnvironment.isHeadless()
          && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
    } catch (AWTError | HeadlessException e) {
      return false;
    }
  }
}
