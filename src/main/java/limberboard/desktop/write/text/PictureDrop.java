package limberboard.desktop.write.text;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.InputEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Takes files that are dropped on a text; with text it does what was done before. */
final class PictureDrop extends TransferHandler {
  private final transient TransferHandler text;
  private final transient Consumer<List<Path>> taken;

  PictureDrop(TransferHandler text, Consumer<List<Path>> taken) {
    this.text = text;
    this.taken = taken;
  }

  private static boolean hasFiles(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return hasFiles(support) || text.canImport(support);
  }

  @Override
  @SuppressWarnings("unchecked")
  public boolean importData(TransferSupport support) {
    if (!hasFiles(support)) {
      return text.importData(support);
    }
    try {
      List<File> files =
          (List<File>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      taken.accept(files.stream().map(File::toPath).toList());
      return true;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }

  @Override
  public int getSourceActions(JComponent component) {
    return text.getSourceActions(component);
  }

  @Override
  public void exportAsDrag(JComponent component, InputEvent event, int action) {
    text.exportAsDrag(component, event, action);
  }

  @Override
  public void exportToClipboard(JComponent component, Clipboard clipboard, int action) {
    text.exportToClipboard(component, clipboard, action);
  }
}
