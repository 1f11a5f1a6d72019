package limberboard.desktop.read;

import java.awt.Point;
import java.awt.Rectangle;
import java.text.BreakIterator;
import java.util.Locale;
import javax.accessibility.AccessibleExtendedText;
import javax.accessibility.AccessibleText;
import javax.accessibility.AccessibleTextSequence;
import javax.swing.text.AttributeSet;
import javax.swing.text.SimpleAttributeSet;
import limberboard.desktop.read.LaidOutText.Part;

/** The letters of a part of a page for those who listen. For the event thread only. */
final class AccessibleWords implements AccessibleText, AccessibleExtendedText {
  private final PageView view;
  private final Part part;

  AccessibleWords(PageView view, Part part) {
    this.view = view;
    this.part = part;
  }

  private String words() {
    return view.text().plain(part);
  }

  private int inside(int offset) {
    return Math.max(0, Math.min(getCharCount(), offset - part.start()));
  }

  @Override
  public int getIndexAtPoint(Point point) {
    int offset = view.offsetAt(point);
    return offset < part.start() || offset > part.end() ? -1 : offset - part.start();
  }

  @Override
  public Rectangle getCharacterBounds(int index) {
    int at = part.start() + index;
    return view.text().boxes(new Part(at, at + 1)).stream().findFirst().orElseGet(Rectangle::new);
  }

  @Override
  public int getCharCount() {
    return part.end() - part.start();
  }

  @Override
  public int getCaretPosition() {
    return inside(view.selection().caret());
  }

  @Override
  public String getAtIndex(int unit, int index) {
    return letters(getTextSequenceAt(unit, index));
  }

  @Override
  public String getAfterIndex(int unit, int index) {
    return letters(getTextSequenceAfter(unit, index));
  }

  @Override
  public String getBeforeIndex(int unit, int index) {
    return letters(getTextSequenceBefore(unit, index));
  }

  private static String letters(AccessibleTextSequence piece) {
    return piece == null ? null : piece.text;
  }

  private BreakIterator pieces(int unit) {
    BreakIterator pieces =
        switch (unit) {
          case WORD -> BreakIterator.getWordInstance(Locale.UK);
          case SENTENCE -> BreakIterator.getSentenceInstance(Locale.UK);
          default -> BreakIterator.getCharacterInstance(Locale.UK);
        };
    pieces.setText(words());
    return pieces;
  }

  @Override
  public AttributeSet getCharacterAttribute(int index) {
    return new SimpleAttributeSet();
  }

  @Override
  public int getSelectionStart() {
    return inside(view.selection().part().start());
  }

  @Override
  public int getSelectionEnd() {
    return inside(view.selection().part().end());
  }

  @Override
  public String getSelectedText() {
    String selected = words().substring(getSelectionStart(), getSelectionEnd());
    return selected.isEmpty() ? null : selected;
  }

  @Override
  public String getTextRange(int start, int end) {
    return start < 0 || end > getCharCount() || start > end ? null : words().substring(start, end);
  }

  @Override
  public AccessibleTextSequence getTextSequenceAt(int unit, int index) {
    if (index < 0 || index >= getCharCount()) {
      return null;
    }
    BreakIterator pieces = pieces(unit);
    int end = pieces.following(index);
    int start = Math.max(0, pieces.previous());
    return new AccessibleTextSequence(start, end, words().substring(start, end));
  }

  @Override
  public AccessibleTextSequence getTextSequenceAfter(int unit, int index) {
    AccessibleTextSequence here = getTextSequenceAt(unit, index);
    return here == null ? null : getTextSequenceAt(unit, here.endIndex);
  }

  @Override
  public AccessibleTextSequence getTextSequenceBefore(int unit, int index) {
    AccessibleTextSequence here = getTextSequenceAt(unit, index);
    return here == null ? null : getTextSequenceAt(unit, here.startIndex - 1);
  }

  @Override
  public Rectangle getTextBounds(int start, int end) {
    return view.text().boxes(new Part(part.start() + start, part.start() + end)).stream()
        .reduce(Rectangle::union)
        .orElseGet(Rectangle::new);
  }
}
