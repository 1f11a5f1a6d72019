package limberboard.desktop.tree;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.SwingUtilities;
import limberboard.trace.DiagnosticTree.Fork;

/** What the mouse does to a tree. */
final class TreePointer extends MouseAdapter {
  private final TreeCanvas view;
  private Point grip = new Point();

  TreePointer(TreeCanvas view) {
    this.view = view;
  }

  private Optional<Fork> mark(MouseEvent e) {
    Point2D point = view.sight().inLayout(e.getPoint());
    return view.layoutNow().flatMap(layout -> layout.markAt(point));
  }

  private Optional<Fork> fork(MouseEvent e) {
    Point2D point = view.sight().inLayout(e.getPoint());
    return view.layoutNow().flatMap(layout -> layout.at(point));
  }

  @Override
  public void mousePressed(MouseEvent e) {
    view.requestFocusInWindow();
    grip = e.getLocationOnScreen();
    Optional<Fork> mark = mark(e);
    mark.or(() -> fork(e)).ifPresent(view::point);
    mark.ifPresent(fork -> view.walk().ifPresent(walk -> walk.toggle(fork)));
  }

  @Override
  public void mouseClicked(MouseEvent e) {
    if (e.getClickCount() == 2 && mark(e).isEmpty()) {
      fork(e).ifPresent(fork -> view.walk().ifPresent(walk -> walk.toggle(fork)));
    }
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    Point now = e.getLocationOnScreen();
    view.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
    view.sight().drag(now.x - grip.x, now.y - grip.y);
    grip = now;
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    mouseMoved(e);
  }

  @Override
  public void mouseMoved(MouseEvent e) {
    boolean works = mark(e).isPresent() || fork(e).isPresent();
    view.setCursor(Cursor.getPredefinedCursor(works ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent e) {
    if (e.isControlDown()) {
      view.sight().zoom(view.sight().zoom().by(-e.getPreciseWheelRotation()), e.getPoint());
    } else {
      view.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(view, e, view.getParent()));
    }
  }
}
