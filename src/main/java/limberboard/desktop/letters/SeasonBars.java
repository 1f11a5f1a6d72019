package limberboard.desktop.letters;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import limberboard.desktop.look.Palette;

/** Counts as bars, one a season, with the number on each. */
final class SeasonBars extends JComponent {
  private static final int BAR = 38;
  private static final int GAP = 6;
  private static final int HIGH = 34;
  private final transient List<Integer> seasons;
  private final transient List<Integer> counts;
  private final int most;

  /**
   * Bars.
   *
   * @param seasons the years that stand below them
   * @param counts one a season
   * @param most the highest count of all bars that are compared
   * @param words what they say, for somebody who listens to it
   */
  SeasonBars(List<Integer> seasons, List<Integer> counts, int most, String words) {
    this.seasons = List.copyOf(seasons);
    this.counts = List.copyOf(counts);
    this.most = Math.max(1, most);
    getAccessibleContext().setAccessibleName(words);
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(
        UIScale.scale(counts.size() * (BAR + GAP)), UIScale.scale(HIGH) + 2 * text());
  }

  private int text() {
    return getFontMetrics(getFont()).getHeight();
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    int foot = getHeight() - 1 - text();
    int room = foot - text();
    int wide = UIScale.scale(BAR);
    int x = 0;
    for (int i = 0; i < counts.size(); i++) {
      int count = counts.get(i);
      int high = room * count / most;
      g2.setColor(Palette.ACCENT.color());
      g2.fillRect(x, foot - high, wide, high);
      g2.setColor(Palette.LINE.color());
      g2.drawLine(x, foot, x + wide, foot);
      g2.setColor(Palette.QUIET.color());
      int descent = g2.getFontMetrics().getDescent();
      centred(g2, Integer.toString(count), x + wide / 2, foot - high - descent);
      centred(g2, Integer.toString(seasons.get(i)), x + wide / 2, getHeight() - 1 - descent);
      x += wide + UIScale.scale(GAP);
    }
    g2.dispose();
  }

  private static void centred(Graphics2D g, String text, int middle, int y) {
    g.drawString(text, middle - g.getFontMetrics().stringWidth(text) / 2, y);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleBars();
    }
    return accessibleContext;
  }

  /** Bars for those who listen. */
  private final class AccessibleBars extends AccessibleJComponent {

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.ICON;
    }
  }

  @Override
  public void updateUI() {
    setFont(javax.swing.UIManager.getFont("Label.font"));
  }
}
