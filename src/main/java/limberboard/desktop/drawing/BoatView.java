package limberboard.desktop.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Function;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;
import limberboard.desktop.look.Palette;
import limberboard.print.picture.SvgPicture;

/**
 * One view of a boat: the drawing with its zones. The mouse or the arrow keys point at a zone, a
 * click or Enter chooses it, Escape lets go.
 */
public final class BoatView extends JComponent implements Accessible {
  private final transient ZoneChoice choice;
  private final transient Function<String, String> titles;
  private transient Optional<SvgPicture> drawing = Optional.empty();
  private transient ZoneMap zones;
  private transient PaintedDrawing painted = new PaintedDrawing();
  private final String view;

  /**
   * An empty view.
   *
   * @param view what is seen: "Profile"
   * @param choice shared with the other views
   * @param titles from a zone's id to what it is called
   */
  public BoatView(String view, ZoneChoice choice, Function<String, String> titles) {
    this.view = view;
    this.choice = choice;
    this.titles = titles;
    setFocusable(true);
    getAccessibleContext().setAccessibleName(view);
    choice.onChange(this::chosenElsewhere);
    Pointer pointer = new Pointer();
    addMouseListener(pointer);
    addMouseMotionListener(pointer);
    addFocusListener(new Focus());
    new ZoneKeys(choice, () -> Optional.ofNullable(zones)).bind(this);
  }

  /** Shows another drawing with its zones. */
  public void show(Optional<SvgPicture> newDrawing, ZoneMap newZones) {
    drawing = newDrawing;
    zones = newZones;
    painted = new PaintedDrawing();
    repaint();
  }

  /** Where a point of the drawing lies in this component, if a drawing is shown. */
  public Optional<Point2D> onScreen(Point2D inDrawing) {
    return sheet().map(sheet -> sheet.toComponent().transform(inDrawing, null));
  }

  private Optional<DrawingFrame> sheet() {
    return drawing.map(
        svg -> {
          Rectangle2D box = new Rectangle2D.Double(0, 0, svg.width(), svg.height());
          return DrawingFrame.fit(box, Math.max(1, getWidth()), Math.max(1, getHeight()));
        });
  }

  private void chosenElsewhere() {
    String spoken =
        choice
            .pointed()
            .or(choice::chosen)
            .map(titles)
            .map(title -> view + ": " + title)
            .orElse(view);
    getAccessibleContext().setAccessibleDescription(spoken);
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(520, 300);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(160, 80);
  }

  @Override
  protected void paintComponent(Graphics g) {
    sheet().ifPresent(sheet -> paint(sheet, (Graphics2D) g.create()));
  }

  private void paint(DrawingFrame sheet, Graphics2D g) {
    painted.paint(drawing.orElseThrow(), sheet, this, g);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    choice.chosen().ifPresent(id -> paintZone(sheet, g, id, 0.35, 3));
    choice
        .pointed()
        .filter(id -> !choice.chosen().equals(Optional.of(id)))
        .ifPresent(id -> paintZone(sheet, g, id, 0.22, 2));
    choice.pointed().or(choice::chosen).ifPresent(id -> paintName(sheet, g, id));
    if (isFocusOwner()) {
      g.setColor(Palette.ACCENT.color());
      g.setStroke(new BasicStroke(2));
      g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, 10, 10);
    }
    g.dispose();
  }

  private void paintZone(DrawingFrame sheet, Graphics2D g, String id, double share, float edge) {
    zones
        .outline(id)
        .ifPresent(
            outline -> {
              Shape shape = sheet.toComponent().createTransformedShape(outline);
              g.setColor(Palette.ACCENT.clear(share));
              g.fill(shape);
              g.setColor(Palette.ACCENT.color());
              g.setStroke(new BasicStroke(edge, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
              g.draw(shape);
            });
  }

  private void paintName(DrawingFrame sheet, Graphics2D g, String id) {
    zones
        .outline(id)
        .ifPresent(
            outline -> {
              Shape shape = sheet.toComponent().createTransformedShape(outline);
              Color ink = Palette.INK.color();
              g.setFont(getFont());
              NameTag.paint(g, titles.apply(id), shape.getBounds(), getSize(), ink);
            });
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setFont(UIManager.getFont("Label.font"));
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleView();
    }
    return accessibleContext;
  }

  private final class AccessibleView extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }
  }

  private final class Focus extends FocusAdapter {
    @Override
    public void focusGained(FocusEvent e) {
      repaint();
    }

    @Override
    public void focusLost(FocusEvent e) {
      choice.point(Optional.empty());
      repaint();
    }
  }

  private final class Pointer extends MouseAdapter {
    @Override
    public void mouseMoved(MouseEvent e) {
      Optional<String> zone = at(e);
      choice.point(zone);
      setCursor(
          Cursor.getPredefinedCursor(
              zone.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    @Override
    public void mouseExited(MouseEvent e) {
      choice.point(Optional.empty());
    }

    @Override
    public void mousePressed(MouseEvent e) {
      requestFocusInWindow();
      choice.choose(at(e));
    }

    private Optional<String> at(MouseEvent e) {
      return sheet()
          .map(sheet -> sheet.toDrawing(e.getPoint()))
          .flatMap(point -> zones.at(point.getX(), point.getY()));
    }
  }
}
