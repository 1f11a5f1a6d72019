package limberboard.desktop.parts;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JLabel;
import limberboard.boat.WorkCaution;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.look.Palette;
import limberboard.library.page.Caution;

/**
 * Dangers and what to do about them: whole, in short, or by name. The word "Caution" and the sign
 * say what it is as well as the colour.
 */
public final class CautionBox extends Column {
  private static final int ARC = 12;
  private static final int BAR = 6;
  private static final int SIGN = 22;
  private static final int SMALL_SIGN = 18;
  private static final String WORD = "Caution: ";

  private CautionBox(int gap, String name, List<? extends JComponent> lines) {
    super(gap);
    lines.forEach(this::add);
    getAccessibleContext().setAccessibleName(name);
  }

  /**
   * Everything the caution says: the danger, the rule of the work, what to do, and who comes before
   * this page.
   *
   * @param caution the caution
   * @param controls shown at the right of its title
   */
  public static CautionBox whole(WorkCaution caution, JComponent... controls) {
    Caution told = caution.page().details();
    List<JComponent> lines = new ArrayList<>();
    List<JComponent> head = new ArrayList<>(List.of(sign(SIGN), Text.caution(named(caution))));
    head.addAll(List.of(controls));
    lines.add(Row.growing(8, 1, head.toArray(JComponent[]::new)));
    lines.add(Text.reading(told.danger()));
    if (!caution.rule().equals(told.shortRule())) {
      lines.add(Text.strong("For this work: " + caution.rule()));
    }
    Column act = new Column(4).padded(2, 0, 2, 0);
    int number = 1;
    for (String line : told.act()) {
      act.add(Row.growing(8, 1, Text.number(number), Text.reading(line)));
      number++;
    }
    lines.add(act);
    if (!told.seek().isEmpty()) {
      lines.add(Text.strong(told.seek()));
    }
    CautionBox box = new CautionBox(6, named(caution), lines);
    box.padded(10, 18, 12, 14);
    return box;
  }

  /**
   * Cautions in short, in one box: of each the danger and the rule that matters for the work.
   *
   * @param cautions the cautions, in the order in which they are to be read
   * @param below shown below them in the same box
   */
  public static CautionBox brief(List<WorkCaution> cautions, JComponent... below) {
    List<JComponent> lines = new ArrayList<>();
    for (WorkCaution caution : cautions) {
      Column words = new Column(0);
      words.add(Text.plain(caution.danger()));
      words.add(Text.strong(caution.rule()));
      lines.add(Row.named(sign(SMALL_SIGN), Text.caution(named(caution)), words));
    }
    lines.addAll(List.of(below));
    CautionBox box = new CautionBox(6, joined(cautions, CautionBox::named), lines);
    box.padded(8, 18, 8, 14);
    return box;
  }

  /**
   * The names of cautions alone, in one line, so that none is out of sight.
   *
   * @param cautions the cautions, at least one
   * @param why why it is no more than the name, to stand behind each; empty for nothing
   * @param controls shown at the right of the names
   */
  public static CautionBox names(
      List<WorkCaution> cautions, Function<WorkCaution, String> why, JComponent... controls) {
    CautionBox box =
        new CautionBox(0, spoken(cautions, why), List.of(line(cautions, why, controls)));
    box.padded(4, 18, 4, 14);
    return box;
  }

  /** The same line without a box, to stand in one. */
  public static JComponent line(
      List<WorkCaution> cautions, Function<WorkCaution, String> why, JComponent... controls) {
    return Row.growing(
        8, 1, sign(SMALL_SIGN), Row.worded(8, Text.caution(spoken(cautions, why)), controls));
  }

  private static String spoken(List<WorkCaution> cautions, Function<WorkCaution, String> why) {
    String word = cautions.size() == 1 ? WORD : "Cautions: ";
    return word
        + joined(
            cautions,
            caution -> {
              String told = why.apply(caution);
              return caution.title() + (told.isEmpty() ? "" : " (" + told + ")");
            });
  }

  private static String joined(List<WorkCaution> cautions, Function<WorkCaution, String> each) {
    return cautions.stream().map(each).collect(Collectors.joining("; "));
  }

  private static String named(WorkCaution caution) {
    String because = caution.because().isEmpty() ? "" : " (" + caution.because() + ")";
    return WORD + caution.title() + because;
  }

  private static JLabel sign(int size) {
    JLabel sign = new JLabel(LineIcon.caution(size));
    sign.putClientProperty("FlatLaf.style", "foreground: $Limberboard.caution");
    return sign;
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
