package limberboard.desktop;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.util.List;

/** Files as another program drops them. */
record DroppedFiles(List<File> files) implements Transferable {
  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {DataFlavor.javaFileListFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavour) {
    return flavour.equals(DataFlavor.javaFileListFlavor);
  }

  @Override
  public Object getTransferData(DataFlavor flavour) {
    return files;
  }
}
