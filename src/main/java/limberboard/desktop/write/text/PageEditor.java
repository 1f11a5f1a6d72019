package limberboard.desktop.write.text;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextPane;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultEditorKit;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.EditorKit;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.TextHabits;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.Typist;
import limberboard.writing.PageText.Stretch;

/** Where the text of one page is typed, with the numbers of its lines and its problems marked. */
public final class PageEditor extends JPanel implements Typist {
  private static final String INDENT = "  ";
  private final transient OpenPage page;
  private final Typed pane = new Typed();
  private final transient Colouring colouring;
  private final LineNumbers numbers;
  private final transient Consumer<String> typed;
  private boolean colouringWaits;

  /**
   * An editor.
   *
   * @param page whose text it is
   * @param typed takes the text after each change
   */
  public PageEditor(OpenPage page, Consumer<String> typed) {
    super(new BorderLayout());
    this.page = page;
    this.typed = typed;
    pane.setName("write-text");
    pane.getAccessibleContext().setAccessibleName("Text of the page " + page.title());
    pane.getDocument().putProperty(DefaultEditorKit.EndOfLineStringProperty, "\n");
    pane.setText(page.text().plain());
    pane.setCaretPosition(0);
    colouring = new Colouring(pane);
    pane.look = colouring::restyle;
    numbers = new LineNumbers(pane);
    JScrollPane scroller = new JScrollPane(pane);
    scroller.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroller.setRowHeaderView(numbers);
    edge(scroller);
    add(scroller, BorderLayout.CENTER);
    pane.getDocument().addDocumentListener(new Changes());
    keys();
    page.onChange(this::mark);
    page.typedIn(this);
    mark();
  }

  private static void edge(JScrollPane scroller) {
    scroller.setBorder(BorderFactory.createLineBorder(Palette.LINE.color()));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (pane != null && pane.getParent().getParent() instanceof JScrollPane scroller) {
      edge(scroller);
    }
  }

  /** Tab moves the text by two blanks; Ctrl+Tab leaves it. */
  private void keys() {
    pane.setFocusTraversalKeys(
        KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("control TAB")));
    pane.setFocusTraversalKeys(
        KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
        Set.of(KeyStroke.getKeyStroke("control shift TAB")));
    Keys.focused(pane, "TAB", () -> pane.replaceSelection(INDENT));
    Keys.focused(pane, "shift TAB", this::outdent);
  }

  private void outdent() {
    String text = plain();
    int line = text.lastIndexOf('\n', pane.getCaretPosition() - 1) + 1;
    int blanks = 0;
    while (blanks < INDENT.length()
        && line + blanks < text.length()
        && text.charAt(line + blanks) == ' ') {
      blanks++;
    }
    replace(text.substring(0, line) + text.substring(line + blanks));
  }

  /** What takes the focus. */
  public JTextPane text() {
    return pane;
  }

  private String plain() {
    try {
      return pane.getDocument().getText(0, pane.getDocument().getLength());
    } catch (BadLocationException e) {
      throw new IllegalStateException("the text has no end", e);
    }
  }

  @Override
  public void replace(String plain) {
    TextHabits.put(pane, plain);
  }

  @Override
  public void goTo(int from, int to) {
    int length = pane.getDocument().getLength();
    pane.select(Math.min(from, length), Math.min(to, length));
    Later.run(this::reveal);
  }

  /** Scrolls so that the caret stands in the upper third. */
  private void reveal() {
    try {
      Rectangle2D at = pane.modelToView2D(pane.getSelectionStart());
      if (at != null) {
        int above = pane.getVisibleRect().height / 3;
        pane.scrollRectToVisible(
            new Rectangle(
                0,
                Math.max(0, (int) at.getY() - above),
                1,
                Math.max(1, pane.getVisibleRect().height)));
      }
    } catch (BadLocationException e) {
      // the text has become shorter meanwhile
    }
  }

  @Override
  public int caret() {
    return pane.getCaretPosition();
  }

  private void mark() {
    pane.getHighlighter().removeAllHighlights();
    numbers.mark(
        page.findings().stream().map(each -> each.problem().line()).collect(Collectors.toSet()));
    page.problems().forEach(each -> each.place().ifPresent(this::mark));
    page.findings().stream()
        .filter(each -> each.remark().isPresent() && each.isSharp())
        .forEach(each -> each.place().ifPresent(this::mark));
  }

  private void mark(Stretch place) {
    int length = pane.getDocument().getLength();
    try {
      pane.getHighlighter()
          .addHighlight(
              Math.min(place.from(), length),
              Math.min(place.to(), length),
              new DefaultHighlighter.DefaultHighlightPainter(Palette.MARK.color()));
    } catch (BadLocationException e) {
      throw new IllegalStateException("a problem stands beyond the text", e);
    }
  }

  private void colourLater() {
    if (!colouringWaits) {
      colouringWaits = true;
      EventQueue.invokeLater(
          () -> {
            colouringWaits = false;
            colouring.show();
            numbers.revalidate();
            numbers.repaint();
          });
    }
  }

  private final class Changes implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent e) {
      changed();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
      changed();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
      // colours only
    }

    private void changed() {
      typed.accept(plain());
      colourLater();
    }
  }

  /** A text pane whose type follows the theme. */
  private static final class Typed extends JTextPane {
    private transient Runnable look = () -> {};

    @Override
    protected EditorKit createDefaultEditorKit() {
      return new WordWrap();
    }

    /** As wide as the room for it, however long a word is. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setFont(new Font(Font.MONOSPACED, Font.PLAIN, UIManager.getFont("defaultFont").getSize()));
      setMargin(new Insets(6, 8, 6, 8));
      setBackground(Palette.SHEET.color());
      setCaretColor(Palette.INK.color());
      if (look != null) {
        look.run();
      }
    }
  }

  /** Takes pictures that are dropped on the text, or pasted. */
  public void onPictures(Consumer<List<Path>> taken) {
    pane.setTransferHandler(new PictureDrop(pane.getTransferHandler(), taken));
  }
}
