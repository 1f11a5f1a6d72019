package limberboard.desktop.upkeep.state;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import limberboard.desktop.base.Place;

/**
 * One way of looking at the upkeep of a boat. It listens to its model and keeps its state while
 * another aspect is shown. For the event thread only.
 */
public interface UpkeepAspect {
  /** A short name that never changes. */
  String id();

  /** What a person reads. */
  String title();

  /** The key that goes there together with Alt; each aspect of the place has its own. */
  char mnemonic();

  /** Prints what is shown; empty while there is nothing to print. */
  default Optional<Runnable> print() {
    return Optional.empty();
  }

  /** Searching in what is shown; empty where nothing can be searched. */
  default Optional<Place.Find> find() {
    return Optional.empty();
  }

  /** What is shown. */
  JComponent component();

  /** The regions in the order in which F6 goes through them; work begins in the first. */
  List<JComponent> regions();
}
