package limberboard.desktop.read;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleText;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.LaidOutText.Part;

/**
 * A page that has been laid out: painted, with what is selected and what has been found marked on
 * it, and the link that the keyboard is on ringed.
 */
final class PageView extends JComponent implements Scrollable, Accessible {
  private static final int LINE = 48;
  private final transient PageSelection selection = new PageSelection(this::repaint);
  private final transient Consumer<String> follow;
  private transient Optional<Laid> laid = Optional.empty();
  private transient Finds finds = Finds.NONE;
  private transient Optional<Link> link = Optional.empty();
  private transient List<AccessiblePart> parts = List.of();

  /**
   * An empty view.
   *
   * @param follow takes the address of a link that is followed
   */
  PageView(Consumer<String> follow) {
    this.follow = follow;
    setName("page");
    setFocusable(true);
    setOpaque(true);
    setAutoscrolls(true);
    addFocusListener(new Focus());
    getAccessibleContext().setAccessibleName("Page");
  }

  /** Shows a page, or another layout of the same. */
  void show(Laid other) {
    laid = Optional.of(other);
    selection.in(other.text());
    link = link.flatMap(old -> other.text().links().stream().filter(old::equals).findFirst());
    parts = List.of();
    revalidate();
    repaint();
  }

  /** Shows nothing. */
  void clear() {
    laid = Optional.empty();
    selection.in(LaidOutText.EMPTY);
    link = Optional.empty();
    parts = List.of();
    revalidate();
    repaint();
  }

  /** The text of what is shown. */
  LaidOutText text() {
    return laid.map(Laid::text).orElse(LaidOutText.EMPTY);
  }

  /** What is selected. */
  PageSelection selection() {
    return selection;
  }

  /** Copies what is selected, plain and as HTML; without effect when nothing is. */
  void copy() {
    if (!selection.isEmpty()) {
      copied().toClipboard();
    }
  }

  /** What is selected, for other programs. */
  Copied copied() {
    return CopiedPage.of(text(), selection.part());
  }

  /** Marks what has been found, and scrolls to the place that is looked at. */
  void mark(Finds found) {
    markOnly(found);
    found.now().ifPresent(this::reveal);
  }

  /** Marks what has been found, and stays where it is. */
  void markOnly(Finds found) {
    finds = found;
    repaint();
  }

  /** The link that the keyboard is on. */
  Optional<Link> link() {
    return link;
  }

  /** Follows a link. */
  void follow(Link to) {
    follow.accept(to.address());
  }

  /**
   * Goes to the next link (1) or the one before (-1); the first is the next one from the top of
   * what is in sight.
   *
   * @return false when there is no further one, and then none is ringed
   */
  boolean stepLink(int by) {
    List<Link> links = text().links();
    int at = link.map(links::indexOf).orElse(-1);
    int to = at >= 0 ? at + by : by > 0 ? firstInSight(links) : -1;
    link = to >= 0 && to < links.size() ? Optional.of(links.get(to)) : Optional.empty();
    link.ifPresent(now -> reveal(LaidOutText.part(now)));
    repaint();
    return link.isPresent();
  }

  /** Takes the ring away. */
  void leaveLink() {
    link = Optional.empty();
    repaint();
  }

  private int firstInSight(List<Link> links) {
    int top = text().offsetAt(getVisibleRect().getLocation());
    for (int i = 0; i < links.size(); i++) {
      if (links.get(i).start() >= top) {
        return i;
      }
    }
    return links.size();
  }

  /** Scrolls so that a part is in sight, with some room around it. */
  void reveal(Part part) {
    text().boxes(part).stream()
        .reduce(Rectangle::union)
        .ifPresent(
            box -> {
              box.grow(0, LINE);
              scrollRectToVisible(box);
            });
  }

  /** The place in the text that lies nearest to a point. */
  int offsetAt(Point point) {
    return text().offsetAt(point);
  }

  @Override
  public Dimension getPreferredSize() {
    return laid.map(Laid::size).orElseGet(() -> new Dimension(100, 100));
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(Palette.SHEET.color());
    g.fillRect(0, 0, getWidth(), getHeight());
    Graphics2D g2 = (Graphics2D) g.create();
    laid.ifPresent(page -> page.paint(g2));
    g2.dispose();
    Graphics2D over = (Graphics2D) g.create();
    over.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    over.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    over.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    finds.places().forEach(place -> fill(over, place, Palette.MARK.color()));
    finds.now().ifPresent(place -> ring(over, place));
    fill(over, selection.part(), Palette.CHOSEN.color());
    if (isFocusOwner()) {
      link.ifPresent(now -> ring(over, LaidOutText.part(now)));
      over.setColor(Palette.ACCENT.color());
      over.fillRect(0, getVisibleRect().y, 3, getVisibleRect().height);
    }
    over.dispose();
  }

  private void fill(Graphics2D g, Part part, Color colour) {
    for (Run run : part.isEmpty() ? List.<Run>of() : text().runs(part)) {
      Rectangle box = run.between(part.start(), part.end());
      if (g.hitClip(box.x, box.y, box.width, box.height)) {
        Graphics2D behind = (Graphics2D) g.create();
        behind.clip(box);
        behind.setColor(colour);
        behind.fill(box);
        behind.setColor(run.ink());
        behind.setFont(run.font());
        behind.drawString(run.text(), run.box().x, run.baseline());
        behind.dispose();
      }
    }
  }

  private void ring(Graphics2D g, Part part) {
    g.setColor(Palette.ACCENT.color());
    g.setStroke(new BasicStroke(2));
    for (Rectangle box : text().boxes(part)) {
      g.drawRoundRect(box.x - 3, box.y - 1, box.width + 5, box.height + 1, 6, 6);
    }
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return LINE;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    int room = orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    return Math.max(LINE, room - LINE);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() instanceof JViewport view && view.getWidth() >= getPreferredSize().width;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() instanceof JViewport view && view.getHeight() > getPreferredSize().height;
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessiblePage();
    }
    return accessibleContext;
  }

  /** A document for those who listen; its parts are put together when somebody asks for them. */
  private final class AccessiblePage extends AccessibleJComponent {
    private List<AccessiblePart> parts() {
      if (parts.isEmpty()) {
        parts = AccessibleParts.of(PageView.this);
      }
      return parts;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.HTML_CONTAINER;
    }

    @Override
    public int getAccessibleChildrenCount() {
      return parts().size();
    }

    @Override
    public Accessible getAccessibleChild(int index) {
      return index >= 0 && index < parts().size() ? parts().get(index) : null;
    }

    @Override
    public AccessibleText getAccessibleText() {
      return new AccessibleWords(PageView.this, new Part(0, text().length()));
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
