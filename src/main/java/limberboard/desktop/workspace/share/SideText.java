package limberboard.desktop.workspace.share;

import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter.DefaultHighlightPainter;
import javax.swing.text.JTextComponent;
import javax.swing.text.View;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Card.Part;

/** One of two texts beside each other; the words in which they differ are underlined. */
final class SideText extends JTextArea {
  SideText(String name, String what) {
    setName(name);
    setEditable(false);
    setLineWrap(true);
    setWrapStyleWord(true);
    setMargin(new Insets(10, 12, 10, 12));
    putClientProperty("FlatLaf.styleClass", "large");
    setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(Palette.LINE.color()),
            BorderFactory.createEmptyBorder(8, 10, 8, 10)));
    getAccessibleContext().setAccessibleName(what);
  }

  void show(String text, List<Part> differing) {
    setText(text.isBlank() ? "(nothing)" : text.stripTrailing());
    setCaretPosition(0);
    getHighlighter().removeAllHighlights();
    int length = getDocument().getLength();
    for (Part part : text.isBlank() ? List.<Part>of() : differing) {
      try {
        getHighlighter()
            .addHighlight(
                Math.min(part.start(), length), Math.min(part.end(), length), new Underline());
      } catch (BadLocationException e) {
        throw new IllegalStateException("the words are there, and their place is not", e);
      }
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (getBorder() != null) {
      setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createLineBorder(Palette.LINE.color()),
              BorderFactory.createEmptyBorder(8, 10, 8, 10)));
    }
  }

  /** A line below the words, on a ground of its own. */
  private static final class Underline extends DefaultHighlightPainter {
    Underline() {
      super(null);
    }

    @Override
    public Shape paintLayer(
        Graphics g, int from, int to, Shape bounds, JTextComponent text, View view) {
      g.setColor(Palette.MARK.color());
      Shape painted = box(from, to, bounds, view);
      Rectangle box = painted.getBounds();
      g.fillRect(box.x, box.y, box.width, box.height);
      g.setColor(Palette.INK.color());
      g.fillRect(box.x, box.y + box.height - 2, box.width, 2);
      return painted;
    }

    private static Shape box(int from, int to, Shape bounds, View view) {
      try {
        if (from == view.getStartOffset() && to == view.getEndOffset()) {
          return bounds.getBounds();
        }
        Shape shape =
            view.modelToView(
                from,
                javax.swing.text.Position.Bias.Forward,
                to,
                javax.swing.text.Position.Bias.Backward,
                bounds);
        return shape.getBounds();
      } catch (BadLocationException e) {
        return bounds.getBounds();
      }
    }
  }
}
