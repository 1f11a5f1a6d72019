package limberboard.desktop.upkeep;

import java.util.List;
import javax.swing.JComponent;

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

  /** What is shown. */
  JComponent component();

  /** The regions in the order in which F6 goes through them; work begins in the first. */
  List<JComponent> regions();
}
