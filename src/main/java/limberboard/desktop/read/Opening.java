package limberboard.desktop.read;

import java.io.IOException;
import java.nio.file.Path;

/** Opens files in the programs that the system has for them. */
@FunctionalInterface
public interface Opening {
  /**
   * Opens a file; may take a while, so not for the event thread.
   *
   * @throws IOException when the system has no program for it, or it does not start
   */
  void open(Path file) throws IOException;
}
