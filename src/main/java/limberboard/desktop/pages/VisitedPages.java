package limberboard.desktop.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where one has been in the window: pages, each with a place in it, and other places of the window
 * between them; to go back and forward. For one thread.
 */
final class VisitedPages {
  /** The place of the window where pages are read. */
  static final String PAGES = "pages";

  private static final int MOST = 200;
  private final List<Visit> visits = new ArrayList<>();
  private int at = -1;

  /**
   * Something that was looked at.
   *
   * @param place the place of the window
   * @param id the page; empty in other places
   * @param position how far it was scrolled when it was left, in pixels
   */
  record Visit(String place, String id, int position) {
    /** Whether a page was read. */
    boolean isPage() {
      return place.equals(PAGES) && !id.isEmpty();
    }
  }

  /** What is looked at now. */
  Optional<Visit> now() {
    return at < 0 ? Optional.empty() : Optional.of(visits.get(at));
  }

  /** The page that is read now, or was read last on the way here. */
  Optional<Visit> page() {
    for (int i = at; i >= 0; i--) {
      if (visits.get(i).isPage()) {
        return Optional.of(visits.get(i));
      }
    }
    return Optional.empty();
  }

  /** Goes to a page; what lay ahead is forgotten. */
  void visit(String id, int leftAt) {
    visit(PAGES, id, leftAt);
  }

  /** Goes to a page or a place; what lay ahead is forgotten. */
  void visit(String place, String id, int leftAt) {
    leave(leftAt);
    if (now().filter(now -> now.place().equals(place) && now.id().equals(id)).isPresent()) {
      return;
    }
    visits.subList(at + 1, visits.size()).clear();
    visits.add(new Visit(place, id, 0));
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
    if (at >= 0 && visits.get(at).isPage()) {
      visits.set(at, new Visit(PAGES, visits.get(at).id(), position));
    }
  }
}
