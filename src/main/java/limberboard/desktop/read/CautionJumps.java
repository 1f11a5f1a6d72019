package limberboard.desktop.read;

import java.awt.Rectangle;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.print.xhtml.Xhtml;

/**
 * The way from a caution's two lines, or from its name at a step, to its whole text at the end of
 * the page, and back to where one was reading. For the event thread only.
 */
final class CautionJumps {
  private final PageView view;
  private final Consumer<String> read;
  private Optional<Left> left = Optional.empty();

  /** Where one was reading before which caution, as long as the same text is shown. */
  private record Left(LaidOutText text, Rectangle seen, String caution) {}

  /**
   * The ways on a page.
   *
   * @param read is told, when one has come back, whose whole text has been read: a caution's id, or
   *     empty for all of the page
   */
  CautionJumps(PageView view, Consumer<String> read) {
    this.view = view;
    this.read = read;
  }

  /** The address of a caution's own page, where this page has only its two lines. */
  static String page(String address) {
    return address.startsWith(Xhtml.FULL)
        ? Xhtml.PAGE + address.substring(Xhtml.FULL.length())
        : address;
  }

  /** Follows a link that leads to another place of the page; false where there is none. */
  boolean goes(String address) {
    if (address.equals(Xhtml.READ)) {
      read.accept("");
      return true;
    }
    if (address.startsWith(Xhtml.FULL)) {
      return toFull(Xhtml.SHORT + address.substring(Xhtml.FULL.length()));
    }
    if (address.startsWith(Xhtml.SHORT)) {
      return back() || show(Xhtml.FULL + address.substring(Xhtml.SHORT.length()));
    }
    return false;
  }

  /** Goes to the first caution in full, or, when one has gone there, back. */
  void toggle() {
    if (!back()) {
      toFull(Xhtml.SHORT);
    }
  }

  private boolean toFull(String address) {
    String caution = address.substring(Xhtml.SHORT.length());
    Left now = new Left(view.text(), view.getVisibleRect(), caution);
    boolean shown = show(address);
    left = shown ? left.filter(this::isHere).or(() -> Optional.of(now)) : left;
    return shown;
  }

  private boolean back() {
    Optional<Left> to = left.filter(this::isHere);
    left = Optional.empty();
    to.ifPresent(
        was -> {
          view.leaveLink();
          view.scrollRectToVisible(was.seen());
          read.accept(was.caution());
        });
    return to.isPresent();
  }

  private boolean isHere(Left place) {
    return place.text() == view.text();
  }

  /** Shows the link with this address, or the first whose address begins so, at the top. */
  private boolean show(String address) {
    Optional<Link> link =
        view.text().links().stream().filter(each -> each.address().startsWith(address)).findFirst();
    link.flatMap(found -> view.text().boxes(LaidOutText.part(found)).stream().findFirst())
        .ifPresent(
            box -> {
              Rectangle seen = view.getVisibleRect();
              int room = 2 * box.height;
              view.scrollRectToVisible(
                  new Rectangle(seen.x, Math.max(0, box.y - room), 1, seen.height));
            });
    return link.isPresent();
  }
}
