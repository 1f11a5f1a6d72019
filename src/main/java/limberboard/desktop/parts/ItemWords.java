package limberboard.desktop.parts;

import java.awt.Component;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/**
 * Shows the entries of a box in words.
 *
 * @param <T> what the entries are
 */
public final class ItemWords<T> extends DefaultListCellRenderer {
  private final transient Function<T, String> words;

  /** Entries in these words; nothing stands for none. */
  public ItemWords(Function<T, String> words) {
    this.words = words;
  }

  @Override
  @SuppressWarnings("unchecked")
  public Component getListCellRendererComponent(
      JList<?> list, Object value, int index, boolean selected, boolean focused) {
    String text = value == null ? " " : words.apply((T) value);
    return super.getListCellRendererComponent(list, text, index, selected, focused);
  }
}
