package limberboard.desktop.base;

import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JComponent;

/**
 * One place of the window, reached from the row of places at its left. A place keeps its state
 * while another is shown. For the event thread only.
 */
public interface Place extends View {
  /** A small drawing. */
  Icon icon();

  /** Where work begins when this place is gone to. */
  default JComponent begin() {
    return regions().get(0);
  }

  /** What is shown there now, for the window's title: the page, the symptom; empty when nothing. */
  default Optional<String> subject() {
    return Optional.empty();
  }

  /** Calls the listener when what is shown there may have changed. */
  default void onSubject(Runnable listener) {
    // a place whose subject never changes has nothing to tell
  }

  /** Whether the window may be closed now; asks about unsaved work where there is some. */
  default boolean mayClose() {
    return true;
  }

  /**
   * The same for a place that writes what is unsaved first: it may not be closed yet, and is closed
   * once the writing is done, if that worked.
   *
   * @param then closes the window; to be called on the event thread once that is right
   */
  default boolean mayClose(Runnable then) {
    return mayClose();
  }

  /**
   * Whether another place may be shown now; asks about work that would be lost sight of.
   *
   * @param then shows the other place; to be called once this place has written what it had to
   */
  default boolean mayLeave(Runnable then) {
    return true;
  }
}
