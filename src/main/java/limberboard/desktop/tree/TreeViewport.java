package limberboard.desktop.tree;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.JViewport;
import limberboard.desktop.base.Listeners;
import limberboard.trace.DiagnosticTree.Fork;

/** Which part of a tree is in sight, and how large. */
final class TreeViewport {
  private static final double LEAST_READABLE = 0.85;
  private static final double LEAST_TOLD_APART = 0.15;

  /** What was made just small enough must not take a pixel more by how numbers are rounded. */
  private static final double ROUNDING = 1e-6;

  private final TreeCanvas view;
  private final Listeners zooming = new Listeners();
  private Zoom zoom = Zoom.USUAL;

  TreeViewport(TreeCanvas view) {
    this.view = view;
  }

  /** Calls the listener whenever the tree is shown larger or smaller. */
  void onZoom(Runnable listener) {
    zooming.add(listener);
  }

  Zoom zoom() {
    return zoom;
  }

  private Optional<JViewport> port() {
    return view.getParent() instanceof JViewport port ? Optional.of(port) : Optional.empty();
  }

  /** How large a layout is on the screen. */
  Dimension size(TreeLayout layout) {
    return new Dimension(
        (int) Math.ceil(layout.width() * zoom.factor() - ROUNDING),
        (int) Math.ceil(layout.height() * zoom.factor() - ROUNDING));
  }

  /** Where a fork's box lies in the view. */
  Optional<Rectangle> of(Fork fork) {
    return view.layoutNow().flatMap(layout -> layout.box(fork)).map(this::onScreen);
  }

  private Rectangle onScreen(Box box) {
    Rectangle2D at = box.bounds();
    double by = zoom.factor();
    return new Rectangle2D.Double(
            at.getX() * by, at.getY() * by, at.getWidth() * by, at.getHeight() * by)
        .getBounds();
  }

  /** The point of the layout below a point of the view. */
  Point2D inLayout(Point point) {
    return new Point2D.Double(point.x / zoom.factor(), point.y / zoom.factor());
  }

  /** Gives the view its size at once, so that what is revealed next is where it belongs. */
  void settle() {
    port()
        .ifPresent(
            port -> {
              view.setSize(view.getPreferredSize());
              port.validate();
            });
  }

  /** Zooms, keeping a point of the view where it is. */
  void zoom(Zoom wanted, Point fixed) {
    double ratio = wanted.factor() / zoom.factor();
    zoom = wanted;
    view.revalidate();
    port()
        .ifPresent(
            port -> {
              Point corner = port.getViewPosition();
              settle();
              int x = (int) Math.round(fixed.x * ratio) - (fixed.x - corner.x);
              int y = (int) Math.round(fixed.y * ratio) - (fixed.y - corner.y);
              scrollTo(port, x, y);
            });
    view.repaint();
    zooming.tell();
  }

  /** Zooms, keeping what is selected where it is when it is in sight. */
  void zoom(Zoom wanted) {
    Rectangle visible = view.getVisibleRect();
    Point middle = new Point((int) visible.getCenterX(), (int) visible.getCenterY());
    zoom(wanted, middleOfSelected().filter(visible::contains).orElse(middle));
  }

  private Optional<Rectangle> selected() {
    return view.walk().flatMap(walk -> of(walk.selected()));
  }

  private Optional<Point> middleOfSelected() {
    return selected().map(box -> new Point((int) box.getCenterX(), (int) box.getCenterY()));
  }

  private static Zoom fitting(TreeLayout layout, JViewport port) {
    return Zoom.fitting(layout.width(), layout.height(), port.getWidth(), port.getHeight());
  }

  /** So small that many steps are in sight at once, but their boxes can still be told apart. */
  void overview() {
    view.layoutNow()
        .ifPresent(
            layout ->
                port()
                    .ifPresent(
                        port ->
                            zoom(
                                new Zoom(
                                    Math.max(LEAST_TOLD_APART, fitting(layout, port).factor())))));
    reveal();
  }

  /** As small as everything that is unfolded needs. */
  void fit() {
    view.layoutNow().ifPresent(layout -> port().ifPresent(port -> zoom(fitting(layout, port))));
  }

  /** Shows what is selected in the middle, at a size at which it can be read. */
  void begin() {
    if (view.layoutNow().isEmpty() || port().isEmpty()) {
      return;
    }
    JViewport port = port().get();
    Zoom all = fitting(view.layoutNow().get(), port);
    zoom(new Zoom(Math.max(LEAST_READABLE, all.factor())));
    selected()
        .ifPresent(
            box -> {
              int before = (int) (box.width * 1.75);
              scrollTo(port, box.x - before, (int) box.getCenterY() - port.getHeight() / 2);
            });
  }

  /** Drags what is in sight. */
  void drag(int dx, int dy) {
    port()
        .ifPresent(
            port -> {
              Point corner = port.getViewPosition();
              scrollTo(port, corner.x - dx, corner.y - dy);
            });
  }

  private void scrollTo(JViewport port, int x, int y) {
    int mostX = Math.max(0, view.getWidth() - port.getWidth());
    int mostY = Math.max(0, view.getHeight() - port.getHeight());
    port.setViewPosition(
        new Point(Math.max(0, Math.min(mostX, x)), Math.max(0, Math.min(mostY, y))));
  }

  /** Scrolls by as much as a fork has moved since it lay there. */
  void keepInPlace(Fork fork, Rectangle before) {
    of(fork).ifPresent(now -> drag(before.x - now.x, before.y - now.y));
  }

  /** Scrolls to what is selected, and to what comes next where there is room for it. */
  void reveal() {
    selected()
        .ifPresent(
            box -> {
              Rectangle visible = view.getVisibleRect();
              Rectangle room = new Rectangle(box);
              room.grow(box.width / 4, box.height);
              room.width = Math.min(room.width + box.width * 3 / 2, visible.width);
              view.scrollRectToVisible(room);
              box.grow(0, Math.min(box.height / 2, visible.height / 4));
              view.scrollRectToVisible(box);
            });
  }
}
