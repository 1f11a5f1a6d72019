package limberboard.desktop.write.text;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextPane;
import javax.swing.Popup;
import javax.swing.PopupFactory;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.When;
import limberboard.desktop.write.complete.Candidate;
import limberboard.desktop.write.complete.Completion;

/**
 * What can stand at the caret, in a list beside it. The text keeps the focus: what is typed on
 * makes the list shorter, arrows move in it, Enter puts in, Escape puts it away.
 */
public final class CompletionList {
  private static final int WIDTH = 420;
  private static final int HEIGHT = 240;
  private final JTextPane text;
  private final Runnable ask;
  private final CardList<Candidate> list;
  private final InputMap usual;
  private final InputMap open;
  private final Consumer<Chosen> chosen;
  private Optional<Popup> popup = Optional.empty();
  private Optional<Completion> shown = Optional.empty();

  /**
   * What was chosen.
   *
   * @param from where what it takes the place of begins
   * @param to where that ends
   * @param letters what stands there now
   */
  public record Chosen(int from, int to, String letters) {}

  /**
   * A list.
   *
   * @param text at whose caret it stands
   * @param ask asks what can stand there; {@link #show} is called with the answer
   * @param chosen puts in what was chosen
   */
  public CompletionList(JTextPane text, Runnable ask, Consumer<Chosen> chosen) {
    this.text = text;
    this.ask = ask;
    this.chosen = chosen;
    list = new CardList<>("What can stand here", CompletionList::card);
    list.setName("write-completion");
    list.setFocusable(false);
    list.onChoose(candidate -> take());
    usual = text.getInputMap(JComponent.WHEN_FOCUSED);
    open = new InputMap();
    open.setParent(usual);
    key("DOWN", () -> list.move(1));
    key("UP", () -> list.move(-1));
    key("PAGE_DOWN", () -> list.move(6));
    key("PAGE_UP", () -> list.move(-6));
    key("ENTER", this::take);
    key("ESCAPE", this::hide);
    text.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            hide();
          }
        });
    When.typed(text, this::typedOn);
  }

  private void key(String key, Runnable action) {
    String name = "completion-" + key;
    open.put(Keys.stroke(key), name);
    text.getActionMap()
        .put(
            name,
            new javax.swing.AbstractAction() {
              @Override
              public void actionPerformed(java.awt.event.ActionEvent e) {
                action.run();
              }
            });
  }

  private static Card card(Candidate candidate) {
    return Card.of(candidate.title(), "").ofKind(candidate.detail());
  }

  private void typedOn() {
    if (popup.isPresent()) {
      ask.run();
    }
  }

  /** Shows what can stand at the caret; says so when nothing can. */
  public void show(Completion completion) {
    hide();
    if (completion.candidates().isEmpty() || !text.isFocusOwner()) {
      return;
    }
    shown = Optional.of(completion);
    list.show(completion.candidates());
    list.setSelectedIndex(0);
    JScrollPane scroller = list.scrolling();
    scroller.getViewport().setOpaque(true);
    scroller.getViewport().setBackground(Palette.SHEET.color());
    scroller.setBorder(BorderFactory.createLineBorder(Palette.ACCENT.color()));
    int width = Math.min(WIDTH, Math.max(200, text.getWidth()));
    list.setSize(width, 1);
    int height = Math.min(HEIGHT, list.getPreferredSize().height + 4);
    scroller.setPreferredSize(new Dimension(width, height));
    Point at = place(completion.from(), width, height);
    Popup made = PopupFactory.getSharedInstance().getPopup(text, scroller, at.x, at.y);
    popup = Optional.of(made);
    made.show();
    text.setInputMap(JComponent.WHEN_FOCUSED, open);
  }

  /** Below the caret, or above it where there is no room below. */
  private Point place(int from, int width, int height) {
    Point at = new Point(0, 0);
    int line = 0;
    try {
      Rectangle2D caret = text.modelToView2D(Math.min(from, text.getDocument().getLength()));
      at = new Point((int) caret.getX(), (int) caret.getMaxY() + 2);
      line = (int) caret.getHeight();
    } catch (BadLocationException e) {
      // the list then stands at the text's corner
    }
    java.awt.Component root = SwingUtilities.getRoot(text);
    Point within = SwingUtilities.convertPoint(text, at, root);
    within.x = Math.max(0, Math.min(within.x, root.getWidth() - width - 8));
    if (within.y + height > root.getHeight() - 8) {
      within.y = Math.max(0, within.y - height - line - 4);
    }
    SwingUtilities.convertPointToScreen(within, root);
    return within;
  }

  private void take() {
    Optional<Completion> now = shown;
    Optional<Candidate> candidate = list.selected();
    hide();
    now.ifPresent(
        from ->
            candidate.ifPresent(
                each -> chosen.accept(new Chosen(from.from(), from.to(), each.letters()))));
  }

  /** Puts it away. */
  public void hide() {
    popup.ifPresent(Popup::hide);
    popup = Optional.empty();
    shown = Optional.empty();
    if (text.getInputMap(JComponent.WHEN_FOCUSED) == open) {
      text.setInputMap(JComponent.WHEN_FOCUSED, usual);
    }
  }
}
