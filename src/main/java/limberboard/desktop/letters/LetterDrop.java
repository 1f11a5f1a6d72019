package limberboard.desktop.letters;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes files that are dropped. */
final class LetterDrop extends TransferHandler {
  private final transient Consumer<List<Path>> taken;

  LetterDrop(Consumer<List<Path>> taken) {
    this.taken = taken;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  @SuppressWarnings("unchecked")
  public boolean importData(TransferSupport support) {
    if (!canImport(support)) {
      return false;
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
}
