package limberboard.desktop.upkeep.sums;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import limberboard.boat.Boat;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.value.KnownUnit;
import limberboard.workings.sums.Input;

/** The fields of a sum: numbers with their units, choices; what may be put in, what is wrong. */
final class SumFields extends Column {
  private static final String UNIT_BOX = "limberboard.unit";
  private final transient WorkingsModel model;
  private final transient List<Line> lines = new ArrayList<>();
  private final JButton reset;
  private transient Optional<SumForm> shown = Optional.empty();
  private boolean showing;

  private record Line(Input input, JComponent control, Wrapped hint, Wrapped wrong) {}

  SumFields(WorkingsModel model) {
    super(12);
    this.model = model;
    padded(2, 10, 10, 10);
    reset = Buttons.plain("", "sum-reset", "Takes back what you put in for this sum", model::reset);
    model.onChange(this::refresh);
    refresh();
  }

  /** What takes the focus: the first field. */
  JComponent region() {
    return lines.isEmpty() ? reset : lines.get(0).control();
  }

  private void refresh() {
    SumForm form = model.form();
    if (shown.filter(before -> before == form).isEmpty()) {
      shown = Optional.of(form);
      build(form);
    }
    showing = true;
    lines.forEach(line -> show(line, form));
    showing = false;
    reset.setText(
        model.boat().map(boat -> "Back to " + boat.name() + "’s numbers").orElse("Back to usual"));
    reset.setEnabled(form.isTouched());
    revalidate();
    repaint();
  }

  private void build(SumForm form) {
    removeAll();
    lines.clear();
    add(Text.heading("What goes in"));
    for (Input input : form.sum().inputs()) {
      Wrapped hint = Text.quiet("");
      Wrapped wrong = Text.strong("");
      JComponent control = input instanceof Input.Choice choice ? choice(choice) : number(input);
      JLabel name = new JLabel(input.title());
      name.setLabelFor(control);
      control.getAccessibleContext().setAccessibleName(input.title());
      Column line = new Column(3);
      line.add(name);
      line.add(input instanceof Input.Number number ? withUnit(number, control) : control);
      line.add(wrong);
      line.add(hint);
      lines.add(new Line(input, control, hint, wrong));
      add(line);
    }
    add(Row.wrapping(8, reset));
  }

  private JComponent number(Input input) {
    JTextField field = new JTextField();
    field.setName("sum-" + input.id());
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, input.usualText());
    When.typed(field, () -> typed(input, field.getText()));
    return field;
  }

  private JComponent withUnit(Input.Number input, JComponent field) {
    List<KnownUnit> units = SumForm.units(input);
    if (units.size() == 1) {
      return Row.growing(8, 0, field, new UnitLabel(input.unit().symbol(), field));
    }
    JComboBox<KnownUnit> box = new JComboBox<>(units.toArray(KnownUnit[]::new));
    box.setName("sum-" + input.id() + "-unit");
    box.setRenderer(new ItemWords<>(KnownUnit::symbol));
    box.getAccessibleContext().setAccessibleName(input.title() + ", unit");
    box.setSelectedItem(model.form().unit(input));
    box.addActionListener(
        e -> {
          if (!showing) {
            model.form().unit(input, box.getItemAt(box.getSelectedIndex()));
            model.changed();
          }
        });
    field.putClientProperty(UNIT_BOX, box);
    return Row.growing(8, 0, field, box);
  }

  private JComponent choice(Input.Choice input) {
    JComboBox<Input.Option> box = new JComboBox<>(input.options().toArray(Input.Option[]::new));
    box.setName("sum-" + input.id());
    box.setRenderer(new ItemWords<>(Input.Option::title));
    box.addActionListener(
        e -> {
          if (!showing) {
            model.form().type(input, box.getItemAt(box.getSelectedIndex()).word());
            model.changed();
          }
        });
    return box;
  }

  private void typed(Input input, String text) {
    if (!showing) {
      model.form().type(input, text);
      model.changed();
    }
  }

  private void show(Line line, SumForm form) {
    String text = form.text(line.input());
    if (line.input() instanceof Input.Choice choice) {
      choice.option(text).ifPresent(((JComboBox<?>) line.control())::setSelectedItem);
    } else if (line.control() instanceof JTextField field && !field.getText().equals(text)) {
      field.setText(text);
    }
    if (line.input() instanceof Input.Number number
        && line.control().getClientProperty(UNIT_BOX) instanceof JComboBox<?> box) {
      box.setSelectedItem(form.unit(number));
    }
    String problem = form.problem(line.input());
    line.wrong().setText(problem);
    line.wrong().setVisible(!problem.isEmpty());
    String hint = SumWords.hint(line.input(), form, model.boat().map(Boat::name));
    line.hint().setText(hint);
    line.hint().setVisible(!hint.isEmpty());
    line.control().putClientProperty("JComponent.outline", problem.isEmpty() ? null : "error");
    line.control()
        .getAccessibleContext()
        .setAccessibleDescription(problem.isEmpty() ? hint : problem);
  }

  /** A unit that cannot be changed, as high as its field so that both stand on one line. */
  private static final class UnitLabel extends JLabel {
    private final JComponent field;

    UnitLabel(String unit, JComponent field) {
      super(unit);
      this.field = field;
    }

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(super.getPreferredSize().width, field.getPreferredSize().height);
    }
  }
}
