package limberboard.desktop.parts;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultHighlighter;
import limberboard.desktop.look.Palette;

/**
 * Text that wraps at the width it is given. It looks like a label: it takes no focus and cannot be
 * edited, and its text is its accessible name.
 */
public final class Wrapped extends JTextArea {
  private transient Palette ink;
  private transient boolean measuring;

  Wrapped(String text, String styleClass, Palette ink) {
    super(unbroken(text));
    this.ink = ink;
    setLineWrap(true);
    setWrapStyleWord(true);
    setEditable(false);
    setFocusable(false);
    setOpaque(false);
    setBackground(new Color(0, true));
    setBorder(BorderFactory.createEmptyBorder());
    setMargin(new Insets(0, 0, 0, 0));
    setHighlighter(new DefaultHighlighter());
    DefaultCaret still = new DefaultCaret();
    still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    setCaret(still);
    if (!styleClass.isEmpty()) {
      putClientProperty("FlatLaf.styleClass", styleClass);
    }
    Drawing drawing = new Drawing();
    addMouseListener(drawing);
    addMouseMotionListener(drawing);
    addFocusListener(drawing);
    setForeground(ink.color());
    getAccessibleContext().setAccessibleName(text);
  }

  /** Puts other text in its place. */
  @Override
  public void setText(String text) {
    super.setText(unbroken(text));
    if (accessibleContext != null) {
      accessibleContext.setAccessibleName(text);
    }
  }

  /** Shows the text in another colour. */
  public void inColour(Palette other) {
    ink = other;
    setForeground(other.color());
  }

  /** A number and its per cent sign stay on one line. */
  private static String unbroken(String text) {
    return text == null ? "" : text.replace(" %", "\u00a0%");
  }

  /** Paints a mark behind part of the text, as after a search. */
  public void mark(int start, int end) {
    try {
      getHighlighter()
          .addHighlight(
              Math.max(0, start),
              Math.min(getDocument().getLength(), end),
              new DefaultHighlighter.DefaultHighlightPainter(Palette.MARK.color()));
    } catch (BadLocationException e) {
      throw new IllegalArgumentException("no such part of the text: " + start + " to " + end, e);
    }
  }

  /**
   * Lets the mouse select in it. It takes the focus only from then on until it loses it, so that
   * Tab never stops at text.
   */
  private final class Drawing extends MouseAdapter implements FocusListener {
    @Override
    public void mouseDragged(MouseEvent e) {
      take(e);
    }

    @Override
    public void mousePressed(MouseEvent e) {
      if (e.getClickCount() >= 2) {
        take(e);
      }
      menu(e);
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      menu(e);
    }

    private void take(MouseEvent e) {
      if (SwingUtilities.isLeftMouseButton(e) && !isFocusable()) {
        setFocusable(true);
        requestFocusInWindow();
      }
    }

    private void menu(MouseEvent e) {
      if (e.isPopupTrigger() && !e.isConsumed()) {
        JPopupMenu menu = new JPopupMenu();
        JMenuItem copy = new JMenuItem("Copy");
        String words = getSelectedText() == null ? getText() : getSelectedText();
        copy.addActionListener(chosen -> Copied.of(words).toClipboard());
        menu.add(copy);
        menu.show(Wrapped.this, e.getX(), e.getY());
        e.consume();
      }
    }

    @Override
    public void focusGained(FocusEvent e) {
      getCaret().setSelectionVisible(true);
    }

    @Override
    public void focusLost(FocusEvent e) {
      if (!e.isTemporary()) {
        setFocusable(false);
        select(0, 0);
      }
    }
  }

  /**
   * The text breaks anew when it is measured or painted at another width, and a text area then asks
   * for a new layout. Whoever measures is laying out already: asking again would never end.
   */
  @Override
  public void revalidate() {
    if (!measuring) {
      super.revalidate();
    }
  }

  @Override
  public Dimension getPreferredSize() {
    measuring = true;
    try {
      return super.getPreferredSize();
    } finally {
      measuring = false;
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    measuring = true;
    try {
      super.paintComponent(graphics);
    } finally {
      measuring = false;
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBorder(BorderFactory.createEmptyBorder());
    setMargin(new Insets(0, 0, 0, 0));
    setOpaque(false);
    setBackground(new Color(0, true));
    if (ink != null) {
      setForeground(ink.color());
    }
  }
}
