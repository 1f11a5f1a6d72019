package limberboard.desktop.drawing;

import java.util.Optional;
import limberboard.desktop.base.Observed;

/**
 * Which zone is pointed at and which is chosen, shared by all views of a boat. For the event thread
 * only.
 */
public final class ZoneChoice extends Observed {
  private Optional<String> pointed = Optional.empty();
  private Optional<String> chosen = Optional.empty();

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
}
