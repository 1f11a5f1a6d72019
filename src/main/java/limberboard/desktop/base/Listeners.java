package limberboard.desktop.base;

import java.util.ArrayList;
import java.util.List;

/** Who is called when something happens, in the order they came. For the event thread only. */
public final class Listeners {
  private final List<Runnable> listeners = new ArrayList<>();

  /** Calls this one too from now on. */
  public void add(Runnable listener) {
    listeners.add(listener);
  }

  /** Calls all of them; those added meanwhile are called next time. */
  public void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
