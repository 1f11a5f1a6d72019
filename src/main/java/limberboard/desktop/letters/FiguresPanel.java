package limberboard.desktop.letters;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;

/** What recorded cases add up to: how often, how long, and what comes up, season by season. */
final class FiguresPanel extends JPanel {
  private static final int LINE = 24;
  private static final int READABLE = 860;
  private final transient Session session;
  private final transient Latest latest;
  private final Column content = new Column(10);
  private final JButton back;

  /**
   * A panel.
   *
   * @param background counts
   * @param back goes back to the letters
   */
  FiguresPanel(Session session, Background background, Runnable back) {
    super(new BorderLayout(0, 8));
    this.session = session;
    this.latest = new Latest(background);
    this.back = Buttons.plain("Back to the letters", "figures-back", back);
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 14, 10, 14));
    Column above = new Column(6);
    above.add(Text.title("Statistics"));
    above.add(Row.wrapping(6, this.back));
    add(above, BorderLayout.NORTH);
    content.atMost(READABLE);
    add(content.scrolling(), BorderLayout.CENTER);
    Keys.within(this, "ESCAPE", back);
    Keys.within(this, "PAGE_DOWN", () -> scroll(1));
    Keys.within(this, "PAGE_UP", () -> scroll(-1));
    session.onChange(
        () -> {
          if (isShowing()) {
            count();
          }
        });
  }

  private void scroll(int by) {
    Rectangle seen = content.getVisibleRect();
    seen.y = Math.max(0, seen.y + by * Math.max(1, seen.height - LINE));
    content.scrollRectToVisible(seen);
  }

  /** Counts the cases as they are now. */
  void count() {
    var workspace = session.workspace();
    latest.run("Counting the cases", () -> CaseFigures.of(workspace), this::show);
  }

  private void show(CaseFigures figures) {
    content.removeAll();
    content.add(Text.plain(figures.heading()));
    if (!figures.rising().isEmpty()) {
      content.add(Text.heading("What comes up: tell these owners before it happens"));
      figures.rising().forEach(rising -> content.add(Text.plain(rising)));
    }
    for (CaseFigures.Part part : figures.parts()) {
      content.add(Text.heading(part.title()));
      int most =
          part.lines().stream()
              .flatMap(line -> line.counts().stream())
              .mapToInt(Integer::intValue)
              .max()
              .orElse(1);
      part.lines().forEach(line -> content.add(line(line, most, figures.seasons())));
    }
    content.revalidate();
    content.repaint();
  }

  private static JComponent line(CaseFigures.Line line, int most, List<Integer> seasons) {
    Column words = new Column(0);
    words.add(Text.strong(line.title()));
    words.add(Text.quiet(line.words()));
    return Row.growing(
        12, 1, new SeasonBars(seasons, line.counts(), most, line.spoken(seasons)), words);
  }

  JComponent first() {
    return back;
  }
}
