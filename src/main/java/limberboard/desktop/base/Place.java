package limberboard.desktop.base;

import java.util.List;
import java.util.Optional;
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

  /** The regions of this place in the order in which F6 goes through them. At least one. */
  List<JComponent> regions();

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

  /** Prints what is shown; empty while there is nothing to print. */
  default Optional<Runnable> print() {
    return Optional.empty();
  }

  /** Begins a search in what is shown; empty where nothing can be searched. */
  default Optional<Find> find() {
    return Optional.empty();
  }

  /** Searching in what is shown. */
  interface Find {
    /** Asks for the words to be found. */
    void begin();

    /** Goes to the next place where they stand, or to the one before. */
    void next(boolean forward);
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
