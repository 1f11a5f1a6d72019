package limberboard.desktop.upkeep.start;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;

/** One line of the start's form: what is asked, how it is known, and when it was done. */
final class StartRow extends Column {
  private static final int DAY_COLUMNS = 12;
  private final JComboBox<Told> told;
  private final JTextField when = new JTextField(DAY_COLUMNS);
  private final Wrapped wrong = Text.strong("");
  private boolean refreshing;

  /** What is done with what a person says. */
  interface Heard {
    void told(Told choice);

    void when(String text);
  }

  /**
   * A line.
   *
   * @param id ends the names of the fields
   * @param words what is asked
   * @param title what is asked, for those who hear it
   * @param choices what can be chosen
   * @param further controls behind the fields
   */
  StartRow(
      String id,
      JComponent words,
      String title,
      List<Told> choices,
      Heard heard,
      JComponent... further) {
    super(2);
    told = new JComboBox<>(choices.toArray(Told[]::new));
    told.setName("start-told-" + id);
    told.setRenderer(new ItemWords<>(Told::title));
    told.setKeySelectionManager((key, model) -> byLetter(key));
    told.getAccessibleContext().setAccessibleName(title + ": how it is known");
    told.addActionListener(
        e -> {
          if (!refreshing) {
            heard.told((Told) told.getSelectedItem());
          }
        });
    when.setName("start-when-" + id);
    when.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "5/2024 or 2023");
    when.setToolTipText("When it was last done: 12 Sep 2026, 5/2024 or 2023");
    when.getAccessibleContext().setAccessibleName(title + ": when it was last done");
    When.typed(
        when,
        () -> {
          if (!refreshing) {
            heard.when(when.getText());
          }
        });
    When.focused(when, () -> Later.show(this));
    When.focused(told, () -> Later.show(this));
    JComponent[] controls = new JComponent[further.length + 2];
    controls[0] = told;
    controls[1] = when;
    System.arraycopy(further, 0, controls, 2, further.length);
    add(Row.worded(8, words, controls));
    add(wrong);
  }

  /** The next choice that begins with a letter, without opening the list. */
  private int byLetter(char key) {
    int size = told.getItemCount();
    for (int i = 1; i <= size; i++) {
      int at = (told.getSelectedIndex() + i) % size;
      if (Character.toLowerCase(told.getItemAt(at).title().charAt(0))
          == Character.toLowerCase(key)) {
        return at;
      }
    }
    return -1;
  }

  /** Where the keyboard begins. */
  JComponent first() {
    return told;
  }

  /** What Enter does in either field. */
  void onEnter(Consumer<StartRow> next) {
    Keys.focused(told, "ENTER", () -> enter(next));
    Keys.focused(when, "ENTER", () -> next.accept(this));
  }

  private void enter(Consumer<StartRow> next) {
    if (told.isPopupVisible()) {
      told.hidePopup();
    } else if (when.isEnabled() && when.getText().isBlank()) {
      when.requestFocusInWindow();
    } else {
      next.accept(this);
    }
  }

  /** Shows what is answered, and what is wrong or follows from it. */
  void refresh(Told choice, String day, String below) {
    refreshing = true;
    if (told.getSelectedItem() != choice) {
      told.setSelectedItem(choice);
    }
    boolean known = choice.from().isPresent();
    when.setEnabled(known);
    if (!when.getText().equals(day)) {
      when.setText(day);
    }
    boolean quiet = known && day.isBlank();
    wrong.setText(quiet ? "" : below);
    wrong.setVisible(!wrong.getText().isEmpty());
    when.getAccessibleContext().setAccessibleDescription(below);
    refreshing = false;
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }
}
