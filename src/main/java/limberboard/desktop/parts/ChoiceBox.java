package limberboard.desktop.parts;

import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/**
 * One of several. While its list is open, moving through it chooses nothing; Enter or a click does.
 *
 * @param <T> what there is to choose from
 */
public final class ChoiceBox<T> extends JComboBox<T> {
  private static final int ROWS = 18;
  private final transient Consumer<T> chosen;
  private transient T shown;
  private String asking = " ";
  private boolean showing;

  /**
   * A box.
   *
   * @param name its name
   * @param what what is chosen, for somebody who listens to it
   * @param words an entry in words
   * @param chosen takes what a person chooses
   */
  public ChoiceBox(String name, String what, Function<T, String> words, Consumer<T> chosen) {
    this.chosen = chosen;
    setName(name);
    getAccessibleContext().setAccessibleName(what);
    setRenderer(new Words(words));
    setMaximumRowCount(ROWS);
    ListClosing.of(this, this::choose, this::showAgain);
  }

  /** Says this while nothing is chosen. */
  public ChoiceBox<T> asking(String what) {
    asking = what;
    return this;
  }

  private final class Words extends DefaultListCellRenderer {
    private final transient Function<T, String> words;

    Words(Function<T, String> words) {
      this.words = words;
    }

    @Override
    @SuppressWarnings("unchecked")
    public Component getListCellRendererComponent(
        JList<?> list, Object value, int index, boolean selected, boolean focused) {
      String text = value == null ? asking : words.apply((T) value);
      return super.getListCellRendererComponent(list, text, index, selected, focused);
    }
  }

  /** Shows these entries, one of them as chosen. */
  @SuppressWarnings("unchecked")
  public void show(List<T> entries, T now) {
    showing = true;
    shown = now;
    DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
    entries.forEach(model::addElement);
    setModel(model);
    setSelectedItem(now);
    showing = false;
  }

  @SuppressWarnings("unchecked")
  private void choose() {
    T now = (T) getSelectedItem();
    if (!showing && now != null && !now.equals(shown)) {
      shown = now;
      chosen.accept(now);
    }
  }

  private void showAgain() {
    showing = true;
    setSelectedItem(shown);
    showing = false;
  }
}
