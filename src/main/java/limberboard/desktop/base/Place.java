package limberboard.desktop.base;

import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;

/**
 * One place of the window, reached from the row of places at its left. A place keeps its state
 * while another is shown. For the event thread only.
 */
public interface Place {
  /** A short name that never changes, by which the place is remembered. */
  String id();

  /** What a person reads. */
  String title();

  /** The key that goes there together with Alt. */
  char mnemonic();

  /** A small drawing. */
  Icon icon();

  /** What is shown. */
  JComponent component();

  /**
   * The regions of this place in the order in which F6 goes through them; work begins in the first.
   * At least one.
   */
  List<JComponent> regions();

  /** Whether the window may be closed now; asks about unsaved work where there is some. */
  default boolean mayClose() {
    return true;
  }
}
