package limberboard.desktop.parts;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler.TransferSupport;

/** Files that are dropped on a component. Stateless. */
public final class FilesDropped {
  private FilesDropped() {}

  /** Whether it is files that are dropped. */
  public static boolean in(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  /**
   * Takes the files that are dropped.
   *
   * @return whether they could be taken
   */
  @SuppressWarnings("unchecked")
  public static boolean take(TransferSupport support, Consumer<List<Path>> taken) {
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
