package limberboard.desktop.boats;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** A field to choose in, with what is wrong below it. */
final class ChoiceInput extends Column {
  private final JComboBox<Item> input = new JComboBox<>();
  private final Wrapped wrong = Text.strong("");
  private boolean refreshing;
  private List<Item> shown = List.of();

  /**
   * Something to choose.
   *
   * @param id what is chosen
   * @param title what a person reads
   */
  record Item(String id, String title) {
    @Override
    public String toString() {
      return title;
    }
  }

  ChoiceInput(String name, Consumer<String> choose) {
    super(2);
    input.setName(name);
    input.setMaximumRowCount(20);
    input.addActionListener(
        e -> {
          if (!refreshing && input.getSelectedItem() instanceof Item item) {
            choose.accept(item.id());
          }
        });
    wrong.setVisible(false);
    add(input);
    add(wrong);
  }

  JComboBox<Item> control() {
    return input;
  }

  void refresh(List<Item> items, String chosen, String problem) {
    refreshing = true;
    List<Item> wanted = new ArrayList<>(items);
    if (items.stream().noneMatch(item -> item.id().equals(chosen))) {
      wanted.add(0, new Item("", "Choose …"));
    }
    if (!wanted.equals(shown)) {
      shown = wanted;
      input.setModel(new DefaultComboBoxModel<>(wanted.toArray(Item[]::new)));
    }
    wanted.stream()
        .filter(item -> item.id().equals(chosen))
        .findFirst()
        .ifPresentOrElse(input::setSelectedItem, () -> input.setSelectedIndex(0));
    wrong.setText(problem);
    wrong.setVisible(!problem.isEmpty());
    refreshing = false;
  }
}
