package limberboard.desktop.write.text;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.JTextComponent;
import limberboard.desktop.look.Palette;

/** The numbers of lines beside a text; those with a problem are marked. */
final class LineNumbers extends JComponent {
  private static final int MARGIN = 6;
  private final JTextComponent text;
  private transient Set<Integer> marked = Set.of();

  LineNumbers(JTextComponent text) {
    this.text = text;
    setOpaque(true);
  }

  /** Marks lines, counted from 1. */
  void mark(Set<Integer> lines) {
    if (!marked.equals(lines)) {
      marked = Set.copyOf(lines);
      repaint();
    }
  }

  private Element lines() {
    return text.getDocument().getDefaultRootElement();
  }

  @Override
  public Dimension getPreferredSize() {
    int digits = Math.max(2, Integer.toString(lines().getElementCount()).length());
    FontMetrics metrics = getFontMetrics(text.getFont());
    return new Dimension(
        metrics.charWidth('0') * digits + 2 * MARGIN + 2, text.getPreferredSize().height);
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g;
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g2.setColor(Palette.PAPER.color());
    g2.fillRect(0, 0, getWidth(), getHeight());
    Font font = text.getFont();
    int first =
        lines().getElementIndex(text.viewToModel2D(new java.awt.Point(0, g.getClipBounds().y)));
    int bottom = g.getClipBounds().y + g.getClipBounds().height;
    for (int i = first; i < lines().getElementCount(); i++) {
      Rectangle2D at = place(i);
      if (at.getY() > bottom) {
        break;
      }
      paint(g2, font, i + 1, at);
    }
  }

  private Rectangle2D place(int line) {
    try {
      Rectangle2D at = text.modelToView2D(lines().getElement(line).getStartOffset());
      return at == null ? new Rectangle2D.Double() : at;
    } catch (BadLocationException e) {
      throw new IllegalStateException("a line begins nowhere", e);
    }
  }

  private void paint(Graphics2D g, Font font, int line, Rectangle2D at) {
    boolean problem = marked.contains(line);
    if (problem) {
      g.setColor(Palette.MARK.color());
      g.fillRect(0, (int) at.getY(), getWidth(), (int) Math.ceil(at.getHeight()));
    }
    g.setFont(problem ? font.deriveFont(Font.BOLD) : font);
    g.setColor((problem ? Palette.INK : Palette.QUIET).color());
    String number = Integer.toString(line);
    FontMetrics metrics = g.getFontMetrics();
    g.drawString(
        number,
        getWidth() - MARGIN - metrics.stringWidth(number),
        (int) at.getY() + metrics.getAscent());
  }
}
