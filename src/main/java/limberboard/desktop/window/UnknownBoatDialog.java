package limberboard.desktop.window;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import limberboard.boat.Boat;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Scrolling;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/** Asks for a boat that nobody has entered: model, year, and what is known to be fitted. */
final class UnknownBoatDialog {
  private static final int GAP = 8;
  private static final int BESIDE = 40;
  private final UnknownBoat model;
  private final JDialog dialog;
  private final Wrapped problem = Text.strong("");
  private final JPanel equipment = new JPanel(new BorderLayout());
  private final JButton use;
  private Optional<Boat> answer = Optional.empty();

  private UnknownBoatDialog(JFrame above, UnknownBoat model) {
    this.model = model;
    dialog = new JDialog(above, "A boat not entered", true);
    use = Buttons.main("Use this boat", "unknown-use", this::use);
    equipment.setOpaque(false);
    dialog.setContentPane(content());
    dialog.getRootPane().setDefaultButton(use);
    Keys.within(dialog.getRootPane(), "ESCAPE", dialog::dispose);
    refit();
    refresh();
    size(above);
  }

  /**
   * Asks, and waits for the answer.
   *
   * @return empty when nothing was chosen
   */
  static Optional<Boat> ask(JFrame above, UnknownBoat model) {
    UnknownBoatDialog asking = new UnknownBoatDialog(above, model);
    asking.dialog.setVisible(true);
    return asking.answer;
  }

  private JPanel content() {
    Column fields = new Column(GAP).padded(16, 20, 8, 20);
    fields.add(
        Text.plain(
            "What you leave as it is, is taken as the yard usually fitted it that year. Nothing is"
                + " written; a boat with a log is entered in Boats."));
    Form form = new Form(GAP);
    line(form, "Model", "unknown-model", model.models(), Page::title, this::remodel);
    JTextField year = new JTextField(6);
    year.setName("unknown-year");
    When.typed(
        year,
        () -> {
          model.year(year.getText());
          refit();
          refresh();
        });
    form.line("Built in", year, year);
    line(form, "Water", "unknown-water", List.of(Water.values()), Water::spoken, model::water);
    line(form, "Used for", "unknown-use-of", List.of(Use.values()), Use::spoken, model::use);
    fields.add(form);
    fields.add(problem);
    fields.add(equipment);
    JScrollPane scroller = Scrolling.of(fields);
    JPanel panel = new JPanel(new BorderLayout());
    panel.add(scroller, BorderLayout.CENTER);
    JPanel foot = new JPanel(new BorderLayout());
    foot.setBorder(BorderFactory.createEmptyBorder(GAP, 20, 14, 20));
    foot.add(Row.wrapping(GAP, use, Buttons.plain("Cancel", dialog::dispose)));
    panel.add(foot, BorderLayout.SOUTH);
    return panel;
  }

  private void remodel(Page<Model> chosen) {
    model.model(chosen);
    refit();
    refresh();
  }

  private void refit() {
    Form form = new Form(GAP);
    for (Equipment each : model.choices()) {
      JComboBox<Choice> box =
          line(
              form,
              each.title(),
              "unknown-" + each.id(),
              each.choices(),
              Choice::title,
              choice -> model.fit(each.id(), choice.id()));
      String now = model.fitted().getOrDefault(each.id(), "");
      quietly(box, each.choices().stream().filter(choice -> choice.id().equals(now)).findFirst());
    }
    equipment.removeAll();
    equipment.add(form);
    equipment.revalidate();
    equipment.repaint();
  }

  private static <T> void quietly(JComboBox<T> box, Optional<T> value) {
    var listeners = box.getActionListeners();
    for (var listener : listeners) {
      box.removeActionListener(listener);
    }
    box.setSelectedItem(value.orElse(null));
    for (var listener : listeners) {
      box.addActionListener(listener);
    }
  }

  private static <T> JComboBox<T> line(
      Form form,
      String label,
      String name,
      List<T> values,
      Function<T, String> words,
      Consumer<T> chosen) {
    JComboBox<T> box = new JComboBox<>();
    values.forEach(box::addItem);
    box.setName(name);
    box.setRenderer(new ItemWords<>(words));
    box.addActionListener(
        e -> {
          int at = box.getSelectedIndex();
          if (at >= 0) {
            chosen.accept(box.getItemAt(at));
          }
        });
    form.line(label, box, box);
    return box;
  }

  private void refresh() {
    problem.setText(model.problem().orElse(""));
    problem.setVisible(model.problem().isPresent());
    use.setEnabled(model.problem().isEmpty());
    equipment.setVisible(model.problem().isEmpty());
  }

  private void use() {
    answer = model.boat();
    answer.ifPresent(boat -> dialog.dispose());
  }

  private void size(JFrame above) {
    dialog.pack();
    Rectangle room = Screens.usable(above);
    Dimension wanted = dialog.getSize();
    dialog.setSize(
        Math.min(Math.max(wanted.width, above.getWidth() / 2), room.width - BESIDE),
        Math.min(Math.max(wanted.height, above.getHeight() * 2 / 3), room.height - BESIDE));
    dialog.setLocationRelativeTo(above);
  }
}
