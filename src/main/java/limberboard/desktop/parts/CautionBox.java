package limberboard.desktop.parts;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JLabel;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.look.Palette;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;

/**
 * A danger and what to do about it. The word "Caution" and the sign say what it is as well as the
 * colour.
 */
public final class CautionBox extends Column {
  private static final int ARC = 12;
  private static final int BAR = 6;

  private CautionBox(
      String title, List<? extends JComponent> lines, List<? extends JComponent> controls) {
    this("Caution: ", title, lines, controls);
  }

  private CautionBox(
      String word,
      String title,
      List<? extends JComponent> lines,
      List<? extends JComponent> controls) {
    super(6);
    padded(10, 18, 12, 14);
    JLabel sign = new JLabel(LineIcon.caution(22));
    sign.putClientProperty("FlatLaf.style", "foreground: $Limberboard.caution");
    List<JComponent> head = new ArrayList<>(List.of(sign, Text.caution(word + title)));
    head.addAll(controls);
    add(Row.growing(8, 1, head.toArray(JComponent[]::new)));
    lines.forEach(this::add);
    getAccessibleContext().setAccessibleName(word + title);
  }

  /**
   * Everything the caution says: the danger, what to do, and who comes before this page.
   *
   * @param page the caution
   * @param controls shown at the right of its title
   */
  public static CautionBox whole(Page<Caution> page, JComponent... controls) {
    Caution caution = page.details();
    Column act = new Column(4).padded(2, 0, 2, 0);
    int number = 1;
    for (String line : caution.act()) {
      act.add(Row.growing(8, 1, Text.number(number), Text.reading(line)));
      number++;
    }
    List<JComponent> lines = new ArrayList<>(List.of(Text.reading(caution.danger()), act));
    if (!caution.seek().isEmpty()) {
      lines.add(Text.strong(caution.seek()));
    }
    return new CautionBox(page.title(), lines, List.of(controls));
  }

  /**
   * The danger and the first thing to do about it.
   *
   * @param page the caution
   * @param controls shown at the right of its title
   */
  public static CautionBox brief(Page<Caution> page, JComponent... controls) {
    Caution caution = page.details();
    String first = caution.act().isEmpty() ? "" : " " + caution.act().get(0);
    return new CautionBox(
        page.title(), List.of(Text.plain(caution.danger() + first)), List.of(controls));
  }

  /**
   * The caution's name alone.
   *
   * @param page the caution
   * @param controls shown at the right of its title
   */
  public static CautionBox title(Page<Caution> page, JComponent... controls) {
    return titles(List.of(page), controls);
  }

  /**
   * The names of cautions alone, in one box, so that where there is little room none is out of
   * sight.
   *
   * @param pages the cautions, at least one
   * @param controls shown at the right of the names
   */
  public static CautionBox titles(List<Page<Caution>> pages, JComponent... controls) {
    String names = pages.stream().map(Page::title).collect(Collectors.joining("; "));
    String word = pages.size() == 1 ? "Caution: " : "Cautions: ";
    return new CautionBox(word, names, List.of(), List.of(controls));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setColor(Palette.CAUTION_PAPER.color());
    g2.fillRoundRect(0, 0, getWidth(), getHeight(), ARC, ARC);
    g2.setColor(Palette.CAUTION.color());
    g2.fillRoundRect(0, 0, BAR, getHeight(), BAR, BAR);
    g2.dispose();
    super.paintComponent(g);
  }
}
