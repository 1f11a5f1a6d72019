package limberboard.desktop.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which pages were read, with a place in them, to go back and forward. For one thread. */
final class History {
  private static final int MOST = 200;
  private final List<Visit> visits = new ArrayList<>();
  private int at = -1;

  /**
   * A page that was read.
   *
   * @param id the page
   * @param position how far it was scrolled when it was left, in pixels
   */
  record Visit(String id, int position) {}

  /** The page that is read now. */
  Optional<Visit> now() {
    return at < 0 ? Optional.empty() : Optional.of(visits.get(at));
  }

  /** Goes to a page; what lay ahead is forgotten. */
  void visit(String id, int leftAt) {
    leave(leftAt);
    if (now().map(visit -> visit.id().equals(id)).orElse(false)) {
      return;
    }
    visits.subList(at + 1, visits.size()).clear();
    visits.add(new Visit(id, 0));
    if (visits.size() > MOST) {
      visits.remove(0);
    }
    at = visits.size() - 1;
  }

  boolean canGoBack() {
    return at > 0;
  }

  boolean canGoForward() {
    return at < visits.size() - 1;
  }

  void back(int leftAt) {
    if (canGoBack()) {
      leave(leftAt);
      at--;
    }
  }

  void forward(int leftAt) {
    if (canGoForward()) {
      leave(leftAt);
      at++;
    }
  }

  private void leave(int position) {
    if (at >= 0) {
      visits.set(at, new Visit(visits.get(at).id(), position));
    }
  }
}
