package limberboard.desktop.boats;

import java.io.IOException;
import limberboard.boat.Boat;

/** Where boats are kept. Called off the event thread. */
@FunctionalInterface
public interface BoatStore {
  /**
   * Writes a boat, whole or not at all.
   *
   * @throws IOException when it cannot be written
   */
  void write(Boat boat) throws IOException;
}
