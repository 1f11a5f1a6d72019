package limberboard;

import java.awt.AWTError;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.cli.PictureOrder;
import limberboard.cli.Terminal;
import limberboard.desktop.DesktopApp;
import limberboard.desktop.WindowPictures;
import limberboard.library.file.LastNet;
import limberboard.library.file.WorkspaceFolders;

/** The window, as the terminal sees it: opened if there is a display. */
final class Display implements Terminal.Window {
  private final LastNet net;
  private boolean opened;

  /** A window whose failures are caught by this net. */
  Display(LastNet net) {
    this.net = net;
  }

  @Override
  public boolean open(WorkspaceFolders folders) {
    if (isThere()) {
      opened = true;
      DesktopApp.open(folders, net);
    }
    return opened;
  }

  @Override
  public boolean openWithout(Path folder, String why) {
    if (isThere()) {
      opened = true;
      DesktopApp.openWithout(folder, why, net);
    }
    return opened;
  }

  @Override
  public boolean pictures(WorkspaceFolders folders, LocalDate today, PictureOrder order)
      throws IOException {
    if (!isThere()) {
      return false;
    }
    Dimension size = new Dimension(order.width(), order.height());
    new WindowPictures(folders, today, size, order.textPercent()).make(order.to());
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
