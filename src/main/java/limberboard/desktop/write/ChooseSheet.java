package limberboard.desktop.write;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;

/** Chooses a page from a list that gets shorter with each letter typed. */
final class ChooseSheet extends Sheet {
  private final transient Function<String, List<PageChoice>> found;
  private final JTextField filter = new JTextField();
  private final Wrapped words = Text.quiet("");
  private final CardList<PageChoice> list;

  /**
   * A list.
   *
   * @param title what is chosen
   * @param says what stands below the title
   * @param found what fits the words that are typed
   * @param chosen takes what is chosen
   * @param away goes back to the text
   */
  ChooseSheet(
      String title,
      String says,
      Function<String, List<PageChoice>> found,
      Consumer<PageChoice> chosen,
      Runnable away) {
    super(away);
    this.found = found;
    list = new CardList<PageChoice>(title, this::card).onChoose(chosen);
    list.setName("write-pages");
    filter.setName("write-filter");
    filter.putClientProperty(
        FlatClientProperties.PLACEHOLDER_TEXT, "Type some letters of its title");
    filter.getAccessibleContext().setAccessibleName(title);
    When.typed(filter, this::fill);
    Keys.focused(filter, "DOWN", list::requestFocusInWindow);
    Keys.focused(filter, "ENTER", list::chooseSelected);
    Column head = new Column(6);
    head.add(Text.heading(title));
    words.setText(says);
    head.add(words);
    head.add(filter);
    add(head, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
  }

  private Card card(PageChoice choice) {
    List<PageChoice> all = list.entries();
    int at = all.indexOf(choice);
    boolean first = at <= 0 || !all.get(at - 1).card().heading().equals(choice.card().heading());
    return first ? choice.card() : choice.card().under("");
  }

  private void fill() {
    list.show(new ArrayList<>(found.apply(filter.getText())));
    if (!list.entries().isEmpty()) {
      list.setSelectedIndex(0);
    }
  }

  @Override
  void ready() {
    filter.setText("");
    fill();
  }

  /** What there is to choose from has changed. */
  void refresh() {
    if (getParent() != null) {
      PageChoice before = list.getSelectedValue();
      list.show(new ArrayList<>(found.apply(filter.getText())));
      if (before == null && !list.entries().isEmpty()) {
        list.setSelectedIndex(0);
      }
    }
  }

  @Override
  JComponent begin() {
    return filter;
  }

  @Override
  List<JComponent> regions() {
    return List.of(filter, list);
  }
}
