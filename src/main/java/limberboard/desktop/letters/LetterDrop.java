package limberboard.desktop.letters;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;
import limberboard.desktop.parts.FilesDropped;

/** Takes files that are dropped. */
final class LetterDrop extends TransferHandler {
  private final transient Consumer<List<Path>> taken;

  LetterDrop(Consumer<List<Path>> taken) {
    this.taken = taken;
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return FilesDropped.in(support);
  }

  @Override
  public boolean importData(TransferSupport support) {
    return FilesDropped.in(support) && FilesDropped.take(support, taken);
  }
}
