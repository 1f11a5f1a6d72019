package limberboard.desktop.boats;

import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.library.Library;

/** Where boats are kept. Called off the event thread. */
@FunctionalInterface
public interface BoatStore {
  /**
   * Saves a boat, whole or not at all.
   *
   * @param library its models
   * @param base the boat from which the changes were begun; empty for a new one
   * @param wanted the boat as it is to be
   */
  BoatWriter.Outcome save(Library library, Optional<Boat> base, Boat wanted);

  /** The boats of a workspace. */
  static BoatStore of(BoatWriter writer) {
    return (library, base, wanted) ->
        base.isPresent()
            ? writer.save(library, base.get(), wanted)
            : writer.create(library, wanted);
  }
}
