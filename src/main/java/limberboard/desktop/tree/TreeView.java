package limberboard.desktop.tree;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import limberboard.desktop.look.Palette;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * Shows a tree. The mouse drags it, folds it at the marks, and selects; the keys walk through it.
 * Only what is in sight is painted.
 */
public final class TreeView extends JComponent implements Scrollable {
  private static final int SCROLL = 40;
  private static final double LEAST_READABLE = 0.85;
  private final List<Runnable> zoomListeners = new ArrayList<>();
  private transient Optional<TreeWalk> walk = Optional.empty();
  private transient TreeLayout layout;
  private transient TreePainter painter;
  private transient Fonts fonts = Fonts.ofTheme();
  private transient Zoom zoom = Zoom.USUAL;
  private transient Fork seen;
  private String laidOut = "";

  /** An empty view. */
  public TreeView() {
    setName("tree");
    setFocusable(true);
    setOpaque(true);
    getAccessibleContext().setAccessibleName("The whole tree");
    TreePointer pointer = new TreePointer(this);
    addMouseListener(pointer);
    addMouseMotionListener(pointer);
    addMouseWheelListener(pointer);
    addFocusListener(new Focus());
    TreeKeys.bind(this);
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  /** Shows a tree as it is walked, or nothing. */
  void show(Optional<TreeWalk> shown) {
    boolean other = !walk.equals(shown);
    walk = shown;
    if (shown.isEmpty()) {
      layout = null;
      painter = null;
      seen = null;
      laidOut = "";
      repaint();
      return;
    }
    Fork selected = shown.get().selected();
    Optional<Rectangle> before = other ? Optional.empty() : onScreen(selected);
    layOut(shown.get());
    getAccessibleContext().setAccessibleDescription(ForkWords.spoken(shown.get(), selected));
    before.ifPresent(box -> keepInPlace(selected, box));
    if (other) {
      seen = selected;
      SwingUtilities.invokeLater(this::begin);
    } else if (seen == null || seen.number() != selected.number()) {
      seen = selected;
      reveal(selected);
    }
    repaint();
  }

  /** Shows what is selected in the middle, at a size at which it can be read. */
  private void begin() {
    if (layout == null || !(getParent() instanceof JViewport view)) {
      return;
    }
    Zoom all = Zoom.fitting(layout.width(), layout.height(), view.getWidth(), view.getHeight());
    zoom(new Zoom(Math.max(LEAST_READABLE, all.factor())));
    walk.flatMap(shown -> onScreen(shown.selected()))
        .ifPresent(
            box -> {
              int before = (int) (box.width * 1.75);
              scrollTo(view, box.x - before, (int) box.getCenterY() - view.getHeight() / 2);
            });
  }

  /** Scrolls by as much as a fork has moved when something was folded. */
  private void keepInPlace(Fork fork, Rectangle before) {
    onScreen(fork).ifPresent(now -> drag(before.x - now.x, before.y - now.y));
  }

  /** Selects a fork that is in sight, without scrolling. */
  void point(Fork fork) {
    seen = fork;
    walk.ifPresent(shown -> shown.select(fork));
  }

  /** Lays the tree out anew when folds, the mark or the fonts have changed. */
  private void layOut(TreeWalk shown) {
    String state =
        System.identityHashCode(shown)
            + " "
            + shown.foldings()
            + " "
            + shown.here().map(Fork::number).orElse(0)
            + " "
            + fonts.line();
    if (layout == null || !state.equals(laidOut)) {
      laidOut = state;
      layout = TreeLayout.of(shown, fonts);
      painter = new TreePainter(layout, shown, fonts);
      revalidate();
      validateUp();
    }
  }

  /** Gives the view its size at once, so that what is revealed next is where it belongs. */
  private void validateUp() {
    if (getParent() instanceof JViewport view) {
      setSize(getPreferredSize());
      view.validate();
    }
  }

  Optional<TreeWalk> walk() {
    return walk;
  }

  Optional<TreeLayout> layoutNow() {
    return Optional.ofNullable(layout);
  }

  Zoom zoom() {
    return zoom;
  }

  /** How many boxes the last painting touched. */
  int painted() {
    return painter == null ? 0 : painter.painted();
  }

  void onZoom(Runnable listener) {
    zoomListeners.add(listener);
  }

  /** Zooms, keeping a point of the view where it is. */
  void zoom(Zoom wanted, Point fixed) {
    double ratio = wanted.factor() / zoom.factor();
    zoom = wanted;
    revalidate();
    if (getParent() instanceof JViewport view) {
      Point corner = view.getViewPosition();
      validateUp();
      int x = (int) Math.round(fixed.x * ratio) - (fixed.x - corner.x);
      int y = (int) Math.round(fixed.y * ratio) - (fixed.y - corner.y);
      scrollTo(view, x, y);
    }
    repaint();
    List.copyOf(zoomListeners).forEach(Runnable::run);
  }

  private void scrollTo(JViewport view, int x, int y) {
    int mostX = Math.max(0, getWidth() - view.getWidth());
    int mostY = Math.max(0, getHeight() - view.getHeight());
    view.setViewPosition(
        new Point(Math.max(0, Math.min(mostX, x)), Math.max(0, Math.min(mostY, y))));
  }

  /** Zooms, keeping what is selected where it is. */
  void zoom(Zoom wanted) {
    Rectangle visible = getVisibleRect();
    Point middle = new Point((int) visible.getCenterX(), (int) visible.getCenterY());
    zoom(wanted, selectedOnScreen().filter(visible::contains).orElse(middle));
  }

  private Optional<Point> selectedOnScreen() {
    return walk.flatMap(shown -> onScreen(shown.selected()))
        .map(box -> new Point((int) box.getCenterX(), (int) box.getCenterY()));
  }

  /** As small as everything that is unfolded needs. */
  void fit() {
    if (layout != null && getParent() instanceof JViewport view) {
      zoom(Zoom.fitting(layout.width(), layout.height(), view.getWidth(), view.getHeight()));
    }
  }

  /** Drags what is in sight. */
  void drag(int dx, int dy) {
    if (getParent() instanceof JViewport view) {
      Point corner = view.getViewPosition();
      scrollTo(view, corner.x - dx, corner.y - dy);
    }
  }

  /** Where a fork's box lies in this component. */
  public Optional<Rectangle> onScreen(Fork fork) {
    return layoutNow()
        .flatMap(now -> now.box(fork))
        .map(
            box -> {
              Rectangle2D at = box.bounds();
              double by = zoom.factor();
              return new Rectangle2D.Double(
                      at.getX() * by, at.getY() * by, at.getWidth() * by, at.getHeight() * by)
                  .getBounds();
            });
  }

  /** The point of the layout below a point of this component. */
  Point2D inLayout(Point point) {
    return new Point2D.Double(point.x / zoom.factor(), point.y / zoom.factor());
  }

  /** Scrolls to a fork, and to what comes next where there is room for it. */
  void reveal(Fork fork) {
    onScreen(fork)
        .ifPresent(
            box -> {
              Rectangle room = new Rectangle(box);
              room.grow(box.width / 4, box.height);
              room.width = Math.min(room.width + box.width * 3 / 2, getVisibleRect().width);
              scrollRectToVisible(room);
              box.grow(0, Math.min(box.height / 2, getVisibleRect().height / 4));
              scrollRectToVisible(box);
            });
  }

  /** Scrolls to what is selected. */
  void revealSelected() {
    walk.ifPresent(shown -> reveal(shown.selected()));
  }

  @Override
  public Dimension getPreferredSize() {
    if (layout == null) {
      return new Dimension(200, 200);
    }
    return new Dimension(
        (int) Math.ceil(layout.width() * zoom.factor()),
        (int) Math.ceil(layout.height() * zoom.factor()));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setColor(Palette.PAPER.color());
    g2.fillRect(0, 0, getWidth(), getHeight());
    if (painter != null) {
      g2.scale(zoom.factor(), zoom.factor());
      painter.paint(g2, g2.getClip().getBounds2D(), isFocusOwner());
    }
    g2.dispose();
  }

  @Override
  public void updateUI() {
    fonts = Fonts.ofTheme();
    if (walk != null) {
      walk.ifPresent(this::layOut);
    }
    repaint();
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    return layoutNow()
        .flatMap(now -> now.at(inLayout(event.getPoint())))
        .map(fork -> fork.step().text())
        .orElse(null);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return new Dimension(600, 400);
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return SCROLL;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    int size = orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    return Math.max(SCROLL, size - SCROLL);
  }

  /** Fills the room there is. */
  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() instanceof JViewport view && view.getWidth() > getPreferredSize().width;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() instanceof JViewport view && view.getHeight() > getPreferredSize().height;
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleTree();
    }
    return accessibleContext;
  }

  /** A tree for those who listen; the selected fork is its description. */
  private final class AccessibleTree extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.TREE;
    }
  }

  private final class Focus extends FocusAdapter {
    @Override
    public void focusGained(FocusEvent e) {
      repaint();
    }

    @Override
    public void focusLost(FocusEvent e) {
      repaint();
    }
  }
}
