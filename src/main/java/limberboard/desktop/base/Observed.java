package limberboard.desktop.base;

/** What says that it has changed to whoever listens. For the event thread only. */
public abstract class Observed {
  private final Listeners listeners = new Listeners();

  /** Calls the listener after each change. */
  public final void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** Says that something has changed. */
  protected final void tell() {
    listeners.tell();
  }
}
