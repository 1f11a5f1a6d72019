package limberboard.desktop.write.text;

import java.awt.Font;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JTextPane;
import javax.swing.UIManager;
import javax.swing.text.BadLocationException;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.Style;
import javax.swing.text.StyleConstants;
import javax.swing.text.StyleContext;
import javax.swing.text.StyledDocument;
import limberboard.desktop.look.Palette;
import limberboard.desktop.write.text.LineMarkup.Line;
import limberboard.desktop.write.text.LineMarkup.Sort;

/** Shows the parts of a text apart; only lines that have changed are looked at anew. */
final class Colouring {
  private static final MutableAttributeSet PLAIN = new SimpleAttributeSet();
  private final JTextPane pane;
  private final Map<Sort, MutableAttributeSet> looks = new EnumMap<>(Sort.class);
  private List<Line> shown = List.of();

  Colouring(JTextPane pane) {
    this.pane = pane;
    restyle();
  }

  /** Takes the theme's type and colours. */
  void restyle() {
    StyledDocument document = pane.getStyledDocument();
    Font font = UIManager.getFont("defaultFont");
    Style base = document.getStyle(StyleContext.DEFAULT_STYLE);
    StyleConstants.setFontFamily(base, Font.MONOSPACED);
    StyleConstants.setFontSize(base, font.getSize());
    StyleConstants.setForeground(base, Palette.INK.color());
    for (Sort sort : Sort.values()) {
      looks.put(sort, look(sort));
    }
    shown = List.of();
    show();
  }

  private static MutableAttributeSet look(Sort sort) {
    MutableAttributeSet look = new SimpleAttributeSet();
    switch (sort) {
      case QUIET -> StyleConstants.setForeground(look, Palette.QUIET.color());
      case KEY, LINK -> StyleConstants.setForeground(look, Palette.ACCENT.color());
      case HEADING, STRONG -> StyleConstants.setBold(look, true);
      default -> {
        StyleConstants.setBold(look, true);
        StyleConstants.setForeground(look, Palette.ACCENT.color());
      }
    }
    return look;
  }

  /**
   * Shows the text as it is now. The line behind those that have changed is shown anew as well: its
   * first letters may have been put in with them.
   */
  void show() {
    StyledDocument document = pane.getStyledDocument();
    List<Line> now;
    try {
      now = LineMarkup.of(document.getText(0, document.getLength()));
    } catch (BadLocationException e) {
      throw new IllegalStateException("the text has no end", e);
    }
    int shorter = Math.min(shown.size(), now.size());
    int begin = 0;
    int at = 0;
    while (begin < shorter && now.get(begin).equals(shown.get(begin))) {
      at += now.get(begin).text().length() + 1;
      begin++;
    }
    int end = 0;
    while (end < shorter - begin
        && now.get(now.size() - 1 - end).equals(shown.get(shown.size() - 1 - end))) {
      end++;
    }
    int behind = Math.min(now.size(), now.size() - end + 1);
    for (Line line : now.subList(begin, behind)) {
      show(document, at, line);
      at += line.text().length() + 1;
    }
    shown = now;
  }

  private void show(StyledDocument document, int at, Line line) {
    document.setCharacterAttributes(at, line.text().length() + 1, PLAIN, true);
    line.spans()
        .forEach(
            span ->
                document.setCharacterAttributes(
                    at + span.from(), span.to() - span.from(), looks.get(span.sort()), true));
  }
}
