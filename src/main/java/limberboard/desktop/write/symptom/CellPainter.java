package limberboard.desktop.write.symptom;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.desktop.look.Palette;

/**
 * Paints a cell of the table.
 *
 * @param words what the cells say
 * @param plain the letters
 * @param strong the letters of names
 */
record CellPainter(CellWords words, Font plain, Font strong) {
  private static final String MORE = "\u2026";
  private static final double DEEPEST = 0.42;
  private static final int BAR = 4;
  private static final int RING = 2;

  void paint(Graphics2D g, TableCell cell, Rectangle box, boolean selected, boolean focused) {
    g.setColor(ground(cell, selected));
    g.fill(box);
    g.setColor(Palette.LINE.color());
    g.drawLine(box.x, box.y + box.height - 1, box.x + box.width - 1, box.y + box.height - 1);
    boolean empty = cell instanceof TableCell.Caption caption && caption.words().isEmpty();
    if (!empty) {
      g.drawLine(box.x + box.width - 1, box.y, box.x + box.width - 1, box.y + box.height - 1);
    }
    if (cell instanceof TableCell.Word word) {
      shade(g, word, box);
    } else if (cell instanceof TableCell.Weight weight) {
      bar(g, weight, box);
    }
    text(g, cell, box);
    if (selected) {
      g.setColor(focused ? Palette.ACCENT.color() : Palette.QUIET.color());
      g.setStroke(new BasicStroke(RING));
      g.drawRect(box.x + 1, box.y + 1, box.width - RING - 1, box.height - RING - 1);
      g.setStroke(new BasicStroke(1));
    }
  }

  private static Color ground(TableCell cell, boolean selected) {
    if (selected && !(cell instanceof TableCell.Word)) {
      return Palette.CHOSEN.color();
    }
    boolean head =
        cell instanceof TableCell.Caption
            || cell instanceof TableCell.NewCause
            || cell instanceof TableCell.NewCheck;
    return head ? Palette.PAPER.color() : Palette.SHEET.color();
  }

  /** The likelier, the deeper. */
  private void shade(Graphics2D g, TableCell.Word word, Rectangle box) {
    OptionalDouble chance = words.chance(word);
    if (words.isSaid(word) && chance.isPresent()) {
      g.setColor(Palette.ACCENT.clear(DEEPEST * chance.getAsDouble()));
      g.fillRect(box.x, box.y, box.width - 1, box.height - 1);
    }
  }

  /** A bar as long as the weight is against the greatest. */
  private void bar(Graphics2D g, TableCell.Weight weight, Rectangle box) {
    double most =
        words.table().causes().stream()
            .mapToDouble(cause -> cause.weighs().orElse(0))
            .max()
            .orElse(0);
    double mine = words.table().causes().get(weight.cause()).weighs().orElse(0);
    if (most > 0) {
      int room = box.width - 2 * TableMetrics.MARGIN;
      int length = (int) Math.round(room * mine / most);
      g.setColor(Palette.ACCENT.color());
      g.fillRoundRect(
          box.x + TableMetrics.MARGIN, box.y + box.height - BAR - 3, length, BAR, BAR, BAR);
    }
  }

  private void text(Graphics2D g, TableCell cell, Rectangle box) {
    boolean name = cell instanceof TableCell.Ask || cell instanceof TableCell.PageTitle;
    g.setFont(name ? strong : plain);
    boolean quiet = !words.isSaid(cell) || cell instanceof TableCell.Caption;
    g.setColor(quiet ? Palette.QUIET.color() : Palette.INK.color());
    FontMetrics fonts = g.getFontMetrics();
    int room = box.width - 2 * TableMetrics.MARGIN;
    List<String> lines =
        lines(words.shown(cell), fonts, room, Math.max(1, box.height / fonts.getHeight()));
    int above = cell instanceof TableCell.Weight ? BAR : 0;
    int y = box.y + (box.height - above - lines.size() * fonts.getHeight()) / 2 + fonts.getAscent();
    boolean centred = cell instanceof TableCell.Word || cell instanceof TableCell.Answer;
    for (String line : lines) {
      int space = centred ? Math.max(0, room - fonts.stringWidth(line)) / 2 : 0;
      g.drawString(line, box.x + TableMetrics.MARGIN + space, y);
      y += fonts.getHeight();
    }
  }

  /** The text in so many lines at most; what does not go in is left out, and a mark says so. */
  static List<String> lines(String text, FontMetrics fonts, int room, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      boolean fits = fonts.stringWidth(longer) <= room;
      if (fits || line.isEmpty() || lines.size() == most - 1) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    lines.replaceAll(each -> shortened(each, fonts, room));
    return lines;
  }

  private static String shortened(String line, FontMetrics fonts, int room) {
    if (fonts.stringWidth(line) <= room) {
      return line;
    }
    int end = line.length();
    while (end > 1 && fonts.stringWidth(line.substring(0, end).stripTrailing() + MORE) > room) {
      end--;
    }
    return line.substring(0, end).stripTrailing() + MORE;
  }
}
