package limberboard.desktop.read;

import java.io.IOException;
import java.util.Optional;

/** The computer's printers. */
public interface Printing {
  /** Whether there is any; may take a while, so not for the event thread. */
  boolean hasPrinter();

  /**
   * Shows the system's print dialog; for the event thread.
   *
   * @param name what is printed, as printers list it
   * @return empty when nothing is to be printed
   * @throws IOException when the dialog cannot be shown
   */
  Optional<Order> ask(String name) throws IOException;

  /** What was asked for in the dialog. */
  @FunctionalInterface
  interface Order {
    /**
     * Prints; not on the event thread.
     *
     * @param pdf the sheets
     * @throws IOException when they cannot be printed
     */
    void print(byte[] pdf) throws IOException;
  }
}
