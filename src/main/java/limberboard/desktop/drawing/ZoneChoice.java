package limberboard.desktop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which zone is pointed at and which is chosen, shared by all views of a boat. For the event thread
 * only.
 */
public final class ZoneChoice {
  private final List<Runnable> listeners = new ArrayList<>();
  private Optional<String> pointed = Optional.empty();
  private Optional<String> chosen = Optional.empty();

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** The zone under the pointer or the keyboard's cursor. */
  public Optional<String> pointed() {
    return pointed;
  }

  /** The zone that was chosen. */
  public Optional<String> chosen() {
    return chosen;
  }

  /** Points at a zone, or at none. */
  public void point(Optional<String> zone) {
    if (!zone.equals(pointed)) {
      pointed = zone;
      tell();
    }
  }

  /** Chooses a zone, or none. */
  public void choose(Optional<String> zone) {
    if (!zone.equals(chosen)) {
      chosen = zone;
      tell();
    }
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
