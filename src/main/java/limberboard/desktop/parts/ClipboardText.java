package limberboard.desktop.parts;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Optional;

/** The text that another program has copied. */
public final class ClipboardText {
  private ClipboardText() {}

  /** The text there is now; for the event thread. */
  public static Optional<String> now() {
    try {
      Clipboard clipboard = Toolkit.getDefaultToolkit().getSystemClipboard();
      return clipboard.isDataFlavorAvailable(DataFlavor.stringFlavor)
          ? Optional.of((String) clipboard.getData(DataFlavor.stringFlavor))
          : Optional.empty();
    } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
      return Optional.empty(); // nothing that is text, or another program holds it at this moment
    }
  }
}
