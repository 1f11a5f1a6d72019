package limberboard.desktop.letters;

import java.awt.Color;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter.DefaultHighlightPainter;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Keys;

/**
 * Text of a letter: read, selected and copied, or edited as a piece of a draft. Tab leaves it, and
 * files that are dropped on it go to what it lies in.
 */
final class LetterArea extends JTextArea {
  private static final double DANGER = 0.35;
  private transient List<Mark> marks = List.of();

  /**
   * Words that are marked.
   *
   * @param start where they begin
   * @param end where they end
   * @param colour the colour behind them
   */
  record Mark(int start, int end, Palette colour) {}

  private LetterArea(String text, boolean editable) {
    super(text);
    setEditable(editable);
    setLineWrap(true);
    setWrapStyleWord(true);
    Keys.focused(this, "TAB", this::transferFocus);
    Keys.focused(this, "shift TAB", this::transferFocusBackward);
    dress();
    setCaretPosition(0);
  }

  /** Text that is read. */
  static LetterArea read(String text, String name) {
    LetterArea area = new LetterArea(text, false);
    area.getAccessibleContext().setAccessibleName(name);
    return area;
  }

  /** Text that is edited. */
  static LetterArea edited(String text, String name) {
    LetterArea area = new LetterArea(text, true);
    area.getAccessibleContext().setAccessibleName(name);
    return area;
  }

  /** Marks words, in place of those that were marked. */
  void mark(List<Mark> words) {
    marks = List.copyOf(words);
    paintMarks();
  }

  private void paintMarks() {
    getHighlighter().removeAllHighlights();
    int length = getDocument().getLength();
    for (Mark mark : marks) {
      try {
        boolean danger = mark.colour() == Palette.CAUTION;
        Color colour = danger ? mark.colour().clear(DANGER) : mark.colour().color();
        getHighlighter()
            .addHighlight(
                Math.max(0, Math.min(length, mark.start())),
                Math.max(0, Math.min(length, mark.end())),
                new DefaultHighlightPainter(colour));
      } catch (BadLocationException e) {
        throw new IllegalArgumentException("no such words: " + mark, e);
      }
    }
  }

  private void dress() {
    setDropTarget(null);
    putClientProperty("FlatLaf.styleClass", "large");
    if (isEditable()) {
      setBackground(Palette.SHEET.color());
      setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createLineBorder(Palette.LINE.color()),
              BorderFactory.createEmptyBorder(5, 8, 5, 8)));
    } else {
      setOpaque(false);
      setBackground(new Color(0, true));
      setBorder(BorderFactory.createEmptyBorder());
      setMargin(new Insets(0, 0, 0, 0));
    }
  }

  /** Only where somebody works does what lies around it follow. */
  @Override
  public void scrollRectToVisible(Rectangle box) {
    if (isFocusOwner()) {
      super.scrollRectToVisible(box);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (marks != null) {
      dress();
      paintMarks();
    }
  }
}
