package limberboard.desktop.base;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;

/**
 * Something to be looked at, one of several. It keeps its state while another is shown. For the
 * event thread only.
 */
public interface View {
  /** What it is called. */
  Name name();

  /**
   * What it is called.
   *
   * @param id a short name that never changes, by which it is remembered
   * @param title what a person reads
   * @param mnemonic the key that goes there together with Alt; no two in one window share it
   */
  record Name(String id, String title, char mnemonic) {}

  /** A short name that never changes. */
  default String id() {
    return name().id();
  }

  /** What is shown. */
  JComponent component();

  /** The regions in the order in which F6 goes through them, at least one; work begins first. */
  List<JComponent> regions();

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
}
