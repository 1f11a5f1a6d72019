package limberboard.desktop.base;

/** Waits for a pause: each call puts the action off anew. For the event thread only. */
@FunctionalInterface
public interface Delay {
  /** Runs the action after the pause, unless this is called again before. */
  void restart(Runnable action);
}
