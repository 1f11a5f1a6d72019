package limberboard.desktop.read;

import java.util.function.IntConsumer;
import javax.swing.JLabel;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;

/** Finds words in what is read. Enter or F3 goes on, with Shift back; Escape puts it away. */
final class FindBar extends Column {
  private static final int LETTERS = 16;
  private final JTextField words = new JTextField(LETTERS);
  private final JLabel count = Text.label("");
  private final transient Runnable changed;

  /**
   * A bar that is not shown.
   *
   * @param changed is told when the words have changed
   * @param step goes to the next place (1) or the one before (-1)
   * @param close puts the bar away
   */
  FindBar(Runnable changed, IntConsumer step, Runnable close) {
    super(0);
    this.changed = changed;
    padded(6, 8, 6, 8);
    words.setName("find-words");
    words.getAccessibleContext().setAccessibleName("Find on this page");
    count.setName("find-count");
    When.typed(words, changed);
    Keys.focused(words, "ENTER", () -> step.accept(1));
    Keys.focused(words, "shift ENTER", () -> step.accept(-1));
    Keys.within(this, "F3", () -> step.accept(1));
    Keys.within(this, "shift F3", () -> step.accept(-1));
    Keys.within(this, "ESCAPE", close);
    JLabel label = Text.label("Find:");
    label.setLabelFor(words);
    add(
        Row.wrapping(
            8,
            label,
            words,
            count,
            Buttons.plain("Next", () -> step.accept(1)),
            Buttons.plain("Previous", () -> step.accept(-1)),
            Buttons.plain("Done", close)));
    setVisible(false);
  }

  /** What is looked for. */
  String words() {
    return words.getText();
  }

  /** Shows it, with these words where there are any, and puts the focus into it. */
  void open(String selected) {
    if (!selected.isBlank() && !selected.contains("\n")) {
      words.setText(selected.strip());
    }
    setVisible(true);
    words.selectAll();
    words.requestFocusInWindow();
    changed.run();
  }

  /** Says how many places there are. */
  void count(Finds finds) {
    String found = words().isBlank() ? "" : finds.words();
    count.setText(found);
    revalidate();
    words.getAccessibleContext().setAccessibleDescription(found);
  }
}
