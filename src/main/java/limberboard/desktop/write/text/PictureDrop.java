package limberboard.desktop.write.text;

import java.awt.datatransfer.Clipboard;
import java.awt.event.InputEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import limberboard.desktop.parts.FilesDropped;

/** Takes files that are dropped on a text; with text it does what was done before. */
final class PictureDrop extends TransferHandler {
  private final transient TransferHandler text;
  private final transient Consumer<List<Path>> taken;

  PictureDrop(TransferHandler text, Consumer<List<Path>> taken) {
    this.text = text;
    this.taken = taken;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return FilesDropped.in(support) || text.canImport(support);
  }

  @Override
  public boolean importData(TransferSupport support) {
    return FilesDropped.in(support) ? FilesDropped.take(support, taken) : text.importData(support);
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
