package limberboard.desktop.write.text;

import javax.swing.text.AbstractDocument;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.GlyphView;
import javax.swing.text.LabelView;
import javax.swing.text.StyledEditorKit;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;

/**
 * Breaks lines behind blanks, found anew each time. The platform's own views remember where lines
 * may break by places of the whole text, and keep that when text was put in further up.
 */
final class WordWrap extends StyledEditorKit {
  @Override
  public ViewFactory getViewFactory() {
    ViewFactory usual = super.getViewFactory();
    return element ->
        AbstractDocument.ContentElementName.equals(element.getName())
            ? new Words(element)
            : usual.create(element);
  }

  /** A stretch of letters that look alike. */
  private static final class Words extends LabelView {
    Words(Element element) {
      super(element);
    }

    /** However narrow the room is, a line breaks there. */
    @Override
    public float getMinimumSpan(int axis) {
      return axis == View.X_AXIS ? 1 : super.getMinimumSpan(axis);
    }

    @Override
    public int getBreakWeight(int axis, float pos, float len) {
      if (axis != View.X_AXIS) {
        return super.getBreakWeight(axis, pos, len);
      }
      int from = getStartOffset();
      int to = bounded(from, pos, len);
      if (to == from) {
        return View.BadBreakWeight;
      }
      return blank(from, to) > from ? View.ExcellentBreakWeight : View.GoodBreakWeight;
    }

    @Override
    public View breakView(int axis, int from, float pos, float len) {
      if (axis != View.X_AXIS) {
        return super.breakView(axis, from, pos, len);
      }
      int fits = bounded(from, pos, len);
      int blank = blank(from, fits);
      int to = fits < getEndOffset() && blank > from ? blank : fits;
      return from == getStartOffset() && to == getEndOffset() ? this : createFragment(from, to);
    }

    private int bounded(int from, float pos, float len) {
      checkPainter();
      GlyphView.GlyphPainter painter = getGlyphPainter();
      return painter.getBoundedPosition(this, from, pos, len);
    }

    /** Behind the last blank of a stretch; its beginning when it has none. */
    private int blank(int from, int to) {
      try {
        String letters = getDocument().getText(from, to - from);
        for (int i = letters.length(); i > 0; i--) {
          if (Character.isWhitespace(letters.charAt(i - 1))) {
            return from + i;
          }
        }
        return from;
      } catch (BadLocationException e) {
        throw new IllegalStateException("a view shows letters beyond the text", e);
      }
    }
  }
}
