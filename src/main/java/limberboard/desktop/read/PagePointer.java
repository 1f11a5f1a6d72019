package limberboard.desktop.read;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * The mouse on a page: it selects letters by drawing, words by a double click and passages by a
 * triple one, follows links, and brings up the context menu.
 */
final class PagePointer extends MouseAdapter {
  private final PageView view;
  private final Consumer<Point> menu;
  private Optional<Link> pressed = Optional.empty();

  private PagePointer(PageView view, Consumer<Point> menu) {
    this.view = view;
    this.menu = menu;
  }

  /** Puts the mouse on a page. */
  static void on(PageView view, Consumer<Point> menu) {
    PagePointer pointer = new PagePointer(view, menu);
    view.addMouseListener(pointer);
    view.addMouseMotionListener(pointer);
  }

  @Override
  public void mousePressed(MouseEvent e) {
    view.requestFocusInWindow();
    pressed = Optional.empty();
    if (e.isPopupTrigger()) {
      menu.accept(e.getPoint());
    } else if (SwingUtilities.isLeftMouseButton(e)) {
      select(e);
    }
  }

  private void select(MouseEvent e) {
    int offset = view.offsetAt(e.getPoint());
    if (e.isShiftDown()) {
      view.selection().to(offset);
    } else if (e.getClickCount() == 2) {
      view.selection().select(view.text().wordAt(offset));
    } else if (e.getClickCount() >= 3) {
      view.selection().select(view.text().passageAt(offset));
    } else {
      view.leaveLink();
      view.selection().from(offset);
      pressed = view.text().linkAt(e.getPoint());
    }
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    if (SwingUtilities.isLeftMouseButton(e)) {
      view.selection().to(view.offsetAt(e.getPoint()));
      view.scrollRectToVisible(new Rectangle(e.getX(), e.getY(), 1, 1));
    }
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    if (e.isPopupTrigger()) {
      menu.accept(e.getPoint());
    } else if (SwingUtilities.isLeftMouseButton(e) && view.selection().isEmpty()) {
      pressed
          .filter(link -> view.text().linkAt(e.getPoint()).filter(link::equals).isPresent())
          .ifPresent(view::follow);
    }
    pressed = Optional.empty();
  }

  @Override
  public void mouseMoved(MouseEvent e) {
    boolean link = view.text().linkAt(e.getPoint()).isPresent();
    view.setCursor(Cursor.getPredefinedCursor(link ? Cursor.HAND_CURSOR : Cursor.TEXT_CURSOR));
  }
}
