package limberboard.desktop.tree;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import limberboard.desktop.look.Palette;
import limberboard.print.type.FontMeasure;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * Shows a tree. The mouse drags it, folds it at the marks, and selects; the keys walk through it.
 * Only what is in sight is painted.
 */
public final class TreeCanvas extends JComponent implements Scrollable, Accessible {
  private static final int SCROLL = 40;
  private final transient TreeViewport sight = new TreeViewport(this);
  private transient Optional<TreeWalk> walk = Optional.empty();
  private transient TreeLayout layout;
  private transient TreePainter painter;
  private transient FontMeasure fonts = ofTheme();
  private transient Fork seen;
  private String laidOut = "";

  /** An empty view. */
  public TreeCanvas() {
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

  private static FontMeasure ofTheme() {
    Font plain = UIManager.getFont("Label.font");
    Font semibold = UIManager.getFont("h4.font");
    Font strong = semibold == null ? plain.deriveFont(Font.BOLD) : semibold;
    return new FontMeasure(plain, strong.deriveFont(plain.getSize2D()));
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
    before.ifPresent(box -> sight.keepInPlace(selected, box));
    if (other) {
      seen = selected;
      SwingUtilities.invokeLater(sight::begin);
    } else if (seen == null || seen.number() != selected.number()) {
      seen = selected;
      sight.reveal();
    }
    repaint();
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
      sight.settle();
    }
  }

  Optional<TreeWalk> walk() {
    return walk;
  }

  Optional<TreeLayout> layoutNow() {
    return Optional.ofNullable(layout);
  }

  /** How many boxes the last painting touched. */
  int painted() {
    return painter == null ? 0 : painter.painted();
  }

  TreeViewport sight() {
    return sight;
  }

  /** Where a fork's box lies in this component, when no fold hides it. */
  public Optional<Rectangle> onScreen(Fork fork) {
    return sight.of(fork);
  }

  @Override
  public Dimension getPreferredSize() {
    return layoutNow().map(sight::size).orElseGet(() -> new Dimension(200, 200));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setColor(Palette.PAPER.color());
    g2.fillRect(0, 0, getWidth(), getHeight());
    if (painter != null) {
      double by = sight.zoom().factor();
      g2.scale(by, by);
      painter.paint(g2, g2.getClip().getBounds2D(), isFocusOwner());
    }
    g2.dispose();
  }

  @Override
  public void updateUI() {
    fonts = ofTheme();
    if (walk != null) {
      walk.ifPresent(this::layOut);
    }
    repaint();
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    return layoutNow()
        .flatMap(now -> now.at(sight.inLayout(event.getPoint())))
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

  /** A tree for those who listen: its parts are its forks, its description the selected one. */
  private final class AccessibleTree extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.TREE;
    }

    @Override
    public int getAccessibleChildrenCount() {
      return walk.map(shown -> shown.visible().size()).orElse(0);
    }

    /** A fork that no fold hides, by its place in the tree. */
    @Override
    public Accessible getAccessibleChild(int index) {
      return walk.filter(shown -> index >= 0 && index < shown.visible().size())
          .map(
              shown ->
                  new AccessibleFork(TreeCanvas.this, shown, shown.visible().get(index), index))
          .orElse(null);
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
