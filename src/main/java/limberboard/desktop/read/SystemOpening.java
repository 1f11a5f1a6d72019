package limberboard.desktop.read;

import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;

/** Opens files as the system does when they are clicked. */
public final class SystemOpening implements Opening {
  @Override
  public void open(Path file) throws IOException {
    boolean can =
        Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    if (!can) {
      throw new IOException(
          "this system names no program for it. Open " + file + " from your file manager");
    }
    Desktop.getDesktop().open(file.toFile());
  }
}
