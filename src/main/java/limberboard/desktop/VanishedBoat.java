package limberboard.desktop;

import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;

/**
 * Says so when the chosen boat's files go while the window is open, and when they are there again.
 * For the event thread only.
 */
final class VanishedBoat {
  private final Session session;
  private final Notices notices;
  private Optional<Boat> last = Optional.empty();
  private boolean gone;

  VanishedBoat(Session session, Notices notices) {
    this.session = session;
    this.notices = notices;
    session.onChange(this::look);
  }

  private void look() {
    Optional<Boat> now = session.boat();
    boolean same = last.map(Boat::id).equals(session.chosen());
    if (now.isEmpty() && last.isPresent() && same && !gone) {
      gone = true;
      notices.warn(
          last.get().name()
              + " can no longer be read: the folder of the boat is gone, or its boat.yaml has a"
              + " mistake (see Pages). Put it right and the boat is here again, or choose another"
              + " boat.");
    } else if (now.isPresent() && same && gone) {
      notices.tell(now.get().name() + " is here again.");
    }
    if (now.isPresent() || !same) {
      last = now;
      gone = false;
    }
  }
}
