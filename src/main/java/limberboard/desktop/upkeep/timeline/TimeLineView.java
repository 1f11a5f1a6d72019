package limberboard.desktop.upkeep.timeline;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import limberboard.desktop.look.Palette;
import limberboard.print.drawing.TimeLineDrawing;
import limberboard.print.picture.SvgPicture;

/**
 * The drawing of a time line, or its head, which stays in sight while the rest scrolls. As wide as
 * the window has room for, but never so small that its letters cannot be read.
 */
final class TimeLineView extends JComponent implements Scrollable {
  private static final double LEAST = 0.9;
  private static final double MOST = 1.7;
  private static final int STEP = 24;
  private final boolean head;
  private transient Optional<SvgPicture> picture = Optional.empty();

  /**
   * A view of nothing yet.
   *
   * @param head whether it shows the seasons' heads, rather than what is below them
   */
  TimeLineView(boolean head) {
    this.head = head;
    setFocusable(!head);
    if (!head) {
      addFocusListener(
          new java.awt.event.FocusAdapter() {
            @Override
            public void focusGained(java.awt.event.FocusEvent e) {
              repaint();
            }

            @Override
            public void focusLost(java.awt.event.FocusEvent e) {
              repaint();
            }
          });
    }
  }

  void show(Optional<SvgPicture> shown, String words) {
    picture = shown;
    getAccessibleContext().setAccessibleName("Time line of the coming seasons");
    getAccessibleContext().setAccessibleDescription(words);
    revalidate();
    repaint();
  }

  private double scale() {
    double natural = picture.map(SvgPicture::width).orElse(1);
    double least = UIScale.scale(1f) * LEAST;
    double most = UIScale.scale(1f) * MOST;
    int room = getParent() instanceof JViewport view ? view.getWidth() : getWidth();
    return Math.max(least, Math.min(most, room / natural));
  }

  private int from() {
    return head ? 0 : (int) Math.round(TimeLineDrawing.headHeight() * scale());
  }

  @Override
  public Dimension getPreferredSize() {
    int width = (int) Math.round(picture.map(SvgPicture::width).orElse(1) * scale());
    double whole = picture.map(SvgPicture::height).orElse(1) * scale();
    double height = head ? TimeLineDrawing.headHeight() * scale() : whole - from();
    return new Dimension(width, Math.max(1, (int) Math.round(height)));
  }

  @Override
  protected void paintComponent(Graphics g) {
    if (picture.isEmpty()) {
      return;
    }
    Graphics2D g2 = (Graphics2D) g.create();
    g2.clipRect(0, 0, getPreferredSize().width, getPreferredSize().height);
    g2.translate(0, -from());
    SvgPicture drawing = picture.get();
    drawing.paint(g2, drawing.width() * scale(), drawing.height() * scale());
    g2.dispose();
    if (isFocusOwner()) {
      Rectangle seen = getVisibleRect();
      g.setColor(Palette.ACCENT.color());
      g.drawRect(seen.x, seen.y, seen.width - 1, seen.height - 1);
      g.drawRect(seen.x + 1, seen.y + 1, seen.width - 3, seen.height - 3);
    }
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return UIScale.scale(STEP);
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return orientation == SwingConstants.VERTICAL
        ? Math.max(STEP, visible.height - UIScale.scale(STEP))
        : visible.width;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return false;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.ICON;
            }
          };
    }
    return accessibleContext;
  }
}
