package limberboard.desktop.drills;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.UIManager;
import limberboard.desktop.look.Palette;
import limberboard.words.CountWords;

/**
 * Who loses minutes at what: a row a student, a column a symptom or kind of mistake, in each field
 * the minutes as a number and as a bar. A field without a bar says in words why.
 */
final class ClassPicture extends JComponent implements Scrollable {
  private static final int PAD = 8;
  private static final int LEAST_COLUMN = 118;
  private static final int BAR = 10;
  private static final int HEAD_LINES = 4;
  private transient ClassFigures figures = new ClassFigures(List.of(), List.of(), "");

  ClassPicture() {
    setName("class-picture");
    setOpaque(false);
    setFocusable(true);
    updateUI();
  }

  void show(ClassFigures other) {
    figures = other;
    getAccessibleContext().setAccessibleName(words());
    revalidate();
    repaint();
  }

  /** Everything in it, for somebody who listens to it. */
  private String words() {
    StringBuilder all = new StringBuilder("Minutes lost. ");
    for (ClassFigures.Line row : figures.rows()) {
      all.append(row.student()).append(": ");
      for (int i = 0; i < figures.columns().size(); i++) {
        if (row.cells().get(i).drilled()) {
          all.append(figures.columns().get(i))
              .append(' ')
              .append(Math.round(row.cells().get(i).lost()))
              .append("; ");
        }
      }
    }
    return all.toString();
  }

  private int pad() {
    return UIScale.scale(PAD);
  }

  private FontMetrics text() {
    return getFontMetrics(getFont());
  }

  private int names() {
    int wide = text().stringWidth("Everybody");
    for (ClassFigures.Line row : figures.rows()) {
      wide = Math.max(wide, text().stringWidth(row.student()));
      wide = Math.max(wide, text().stringWidth(summary(row)));
    }
    return wide + 2 * pad();
  }

  private int column() {
    int longest = text().stringWidth("not drilled");
    for (String each : figures.columns()) {
      for (String word : each.split(" ")) {
        longest = Math.max(longest, text().stringWidth(word));
      }
    }
    int least = Math.max(longest + 2 * pad(), text().getHeight() * LEAST_COLUMN / 17);
    int shared = (getVisibleWidth() - names()) / Math.max(1, figures.columns().size());
    return Math.max(least, Math.min(shared, 2 * least));
  }

  private int getVisibleWidth() {
    return getParent() == null ? 0 : getParent().getWidth();
  }

  private int head() {
    int lines = 1;
    for (String each : figures.columns()) {
      lines = Math.max(lines, lines(each, column() - 2 * pad()).size());
    }
    return Math.min(HEAD_LINES, lines) * text().getHeight() + 2 * pad();
  }

  private int row() {
    return 2 * text().getHeight() + UIScale.scale(BAR) + 2 * pad();
  }

  private static String summary(ClassFigures.Line row) {
    return CountWords.of(row.drills(), "drill")
        + ", "
        + Math.round(row.lost())
        + " min"
        + (row.dangers() == 0 ? "" : ", " + CountWords.of(row.dangers(), "danger"));
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(
        names() + column() * figures.columns().size() + 1,
        head() + row() * figures.rows().size() + 1);
  }

  private List<String> lines(String words, int wide) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (text().stringWidth(longer) > wide && !line.isEmpty()) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g2.setFont(getFont());
    heads(g2);
    int y = head();
    for (ClassFigures.Line each : figures.rows()) {
      line(g2, each, y);
      y += row();
    }
    g2.dispose();
  }

  private void heads(Graphics2D g) {
    g.setColor(Palette.INK.color());
    int x = names();
    for (String each : figures.columns()) {
      List<String> lines = lines(each, column() - 2 * pad());
      int y = head() - pad() - Math.min(lines.size(), HEAD_LINES) * text().getHeight();
      for (String line : lines.subList(0, Math.min(lines.size(), HEAD_LINES))) {
        g.drawString(line, x + pad(), y + text().getAscent());
        y += text().getHeight();
      }
      x += column();
    }
  }

  private void line(Graphics2D g, ClassFigures.Line each, int y) {
    g.setColor(Palette.LINE.color());
    g.drawLine(0, y, getWidth(), y);
    g.setColor(Palette.INK.color());
    g.drawString(each.student(), pad(), y + pad() + text().getAscent());
    g.setColor(Palette.QUIET.color());
    g.drawString(summary(each), pad(), y + pad() + text().getHeight() + text().getAscent());
    int x = names();
    for (ClassFigures.Cell cell : each.cells()) {
      cell(g, cell, x, y);
      x += column();
    }
  }

  private void cell(Graphics2D g, ClassFigures.Cell cell, int x, int y) {
    int wide = column() - 2 * pad();
    int base = y + pad() + text().getAscent();
    g.setColor(Palette.LINE.color());
    g.drawLine(x, y, x, y + row());
    if (!cell.drilled()) {
      g.setColor(Palette.QUIET.color());
      g.drawString(figures.none(), x + pad(), base);
      return;
    }
    g.setColor(Palette.INK.color());
    g.drawString(Math.round(cell.lost()) + " min", x + pad(), base);
    if (cell.dangers() > 0) {
      g.setColor(Palette.CAUTION_INK.color());
      g.drawString(CountWords.of(cell.dangers(), "danger"), x + pad(), base + text().getHeight());
    }
    int bar = y + pad() + 2 * text().getHeight();
    int high = UIScale.scale(BAR);
    g.setColor(Palette.LINE.color());
    g.fillRect(x + pad(), bar, wide, high);
    g.setColor(Palette.ACCENT.color());
    g.fillRect(x + pad(), bar, (int) Math.round(wide * cell.lost() / figures.most()), high);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleFigures();
    }
    return accessibleContext;
  }

  /** The picture for those who listen. */
  private final class AccessibleFigures extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.ICON;
    }
  }

  @Override
  public void updateUI() {
    setFont(UIManager.getFont("Label.font"));
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return text().getHeight() * 2;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return row() * 2;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() != null && getParent().getWidth() >= getPreferredSize().width;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
