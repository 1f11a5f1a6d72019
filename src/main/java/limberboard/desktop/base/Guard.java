package limberboard.desktop.base;

/**
 * Is told each time work begins that must not run on the event thread: planning, cutting, counting,
 * rendering. The window itself does nothing with it; tests put in one that looks at the thread.
 */
@FunctionalInterface
public interface Guard {
  /** Looks at nothing. */
  Guard NONE = work -> {};

  /**
   * Work begins, on the thread that does it.
   *
   * @param work what is done: "planning a step"
   */
  void begins(String work);
}
