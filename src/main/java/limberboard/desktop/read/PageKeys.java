package limberboard.desktop.read;

import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.KeyStroke;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.read.LaidOutText.Part;

/**
 * The keys that select in a page, copy, and go from link to link. Tab leaves the page after its
 * last link; Ctrl+Tab leaves it at once.
 */
final class PageKeys {
  private final PageView view;
  private boolean begun;

  private PageKeys(PageView view) {
    this.view = view;
  }

  /** Binds the keys. */
  static void on(PageView view, Consumer<Point> menu) {
    PageKeys keys = new PageKeys(view);
    keys.selecting();
    keys.links();
    for (String key : new String[] {"shift F10", "CONTEXT_MENU"}) {
      Keys.focused(view, key, () -> menu.accept(keys.spot()));
    }
  }

  private void selecting() {
    PageSelection selection = view.selection();
    for (String key : new String[] {"control C", "control INSERT", "COPY"}) {
      Keys.focused(view, key, view::copy);
    }
    Keys.focused(view, "control A", selection::all);
    extend("shift RIGHT", () -> selection.caret() + 1);
    extend("shift LEFT", () -> selection.caret() - 1);
    extend("control shift RIGHT", () -> view.text().word(selection.caret(), 1));
    extend("control shift LEFT", () -> view.text().word(selection.caret(), -1));
    extend("shift DOWN", () -> line(1));
    extend("shift UP", () -> line(-1));
    extend("shift HOME", () -> edge(0));
    extend("shift END", () -> edge(Integer.MAX_VALUE / 2));
    extend("control shift HOME", () -> 0);
    extend("control shift END", () -> view.text().length());
  }

  private void extend(String key, java.util.function.IntSupplier to) {
    Keys.focused(
        view,
        key,
        () -> {
          begin();
          view.selection().to(to.getAsInt());
          view.text().caret(view.selection().caret()).ifPresent(view::scrollRectToVisible);
        });
  }

  /** Before anything was selected or clicked, selecting begins at the top of what is in sight. */
  private void begin() {
    if (view.selection().isEmpty() && view.selection().caret() == 0 && !begun) {
      view.selection().from(view.offsetAt(view.getVisibleRect().getLocation()));
    }
    begun = true;
  }

  private int line(int by) {
    Optional<Rectangle> caret = view.text().caret(view.selection().caret());
    int now = view.selection().caret();
    if (caret.isEmpty()) {
      return now;
    }
    Rectangle at = caret.get();
    int step = Math.max(4, at.height / 2);
    for (int far = 1; far < 60; far++) {
      int y = by > 0 ? at.y + at.height + far * step : at.y - far * step;
      int to = view.offsetAt(new Point(at.x, y));
      boolean moved = view.text().caret(to).filter(box -> box.y != at.y).isPresent();
      if (moved && Integer.signum(to - now) == by) {
        return to;
      }
    }
    return by > 0 ? view.text().length() : 0;
  }

  private int edge(int x) {
    return view.text()
        .caret(view.selection().caret())
        .map(at -> view.offsetAt(new Point(x, at.y + at.height / 2)))
        .orElse(0);
  }

  private void links() {
    view.setFocusTraversalKeys(
        KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("control TAB")));
    view.setFocusTraversalKeys(
        KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
        Set.of(KeyStroke.getKeyStroke("control shift TAB")));
    Keys.focused(
        view,
        "TAB",
        () -> {
          if (!view.stepLink(1)) {
            view.transferFocus();
          }
        });
    Keys.focused(
        view,
        "shift TAB",
        () -> {
          if (!view.stepLink(-1)) {
            view.transferFocusBackward();
          }
        });
    Keys.focused(view, "ENTER", () -> view.link().ifPresent(view::follow));
  }

  /** Where the context menu comes up by key: at what is selected, or in the upper left corner. */
  private Point spot() {
    Part part = view.selection().part();
    Rectangle seen = view.getVisibleRect();
    return view.text().boxes(part).stream()
        .filter(seen::intersects)
        .findFirst()
        .map(box -> new Point(box.x, box.y + box.height))
        .orElse(new Point(seen.x + 24, seen.y + 24));
  }
}
