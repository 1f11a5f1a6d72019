package limberboard.desktop.upkeep.entry;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.EntryForm.Field;
import limberboard.desktop.upkeep.entry.EntryForm.Kind;

/** The fields of an entry for the log; Enter in any of them writes it, Escape leaves it. */
public final class EntryFields extends Column {
  private final transient Runnable changed;
  private final transient Runnable write;
  private final transient Runnable leave;
  private final transient List<Line> lines = new ArrayList<>();
  private transient Optional<EntryForm> form = Optional.empty();
  private final String name;

  private record Line(Field field, JTextField input, Wrapped wrong) {}

  /**
   * No fields yet.
   *
   * @param name begins the names of the fields
   * @param changed is called after each change
   */
  public EntryFields(String name, Runnable changed, Runnable write, Runnable leave) {
    super(6);
    this.name = name;
    this.changed = changed;
    this.write = write;
    this.leave = leave;
  }

  /**
   * Shows a form.
   *
   * @param shown the form
   * @param lastHours the hour meter's last reading, as a hint
   */
  public void show(EntryForm shown, Optional<String> lastHours) {
    if (form.filter(before -> before == shown).isPresent()) {
      refresh();
      return;
    }
    boolean sameFields =
        form.filter(before -> before.fields().equals(shown.fields()))
            .filter(before -> labels(before).equals(labels(shown)))
            .isPresent();
    form = Optional.of(shown);
    if (!sameFields) {
      build(shown, lastHours);
    }
    for (Line line : lines) {
      if (!line.input().getText().equals(shown.text(line.field()))) {
        line.input().setText(shown.text(line.field()));
      }
    }
    refresh();
  }

  private static List<String> labels(EntryForm form) {
    return form.fields().stream().map(form::label).toList();
  }

  private static String called(EntryForm form, Field field) {
    boolean ofSeveral = field.kind() == Kind.NOTE && !field.of().isEmpty();
    return ofSeveral
        ? "note-" + field.of().replace(' ', '-')
        : form.label(field).toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  private void build(EntryForm shown, Optional<String> lastHours) {
    removeAll();
    lines.clear();
    Form fields = new Form(8);
    for (Field field : shown.fields()) {
      Line line = line(shown, field, lastHours);
      Column column = new Column(2);
      column.add(line.input());
      column.add(line.wrong());
      fields.line(shown.label(field), line.input(), column);
      lines.add(line);
    }
    add(fields);
  }

  private Line line(EntryForm shown, Field field, Optional<String> lastHours) {
    JTextField input = new JTextField();
    input.setName(name + "-" + called(shown, field));
    input.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, hint(field, lastHours));
    input.setToolTipText(hint(field, lastHours));
    Keys.focused(input, "ENTER", write);
    Keys.focused(input, "ESCAPE", leave);
    When.typed(input, () -> typed(field, input));
    When.focused(input, () -> Later.show(input));
    return new Line(field, input, Text.strong(""));
  }

  private static String hint(Field field, Optional<String> lastHours) {
    return switch (field.kind()) {
      case DAY -> "20 May 2026";
      case HOURS -> lastHours.map(last -> "last " + last).orElse("the meter’s reading");
      case COUNT -> "since the entry before";
      case NOTE -> "anything to remember";
    };
  }

  private void typed(Field field, JTextField input) {
    if (form.filter(shown -> !shown.text(field).equals(input.getText())).isPresent()) {
      form.get().set(field, input.getText());
      refresh();
      changed.run();
    }
  }

  private void refresh() {
    for (Line line : lines) {
      String problem =
          form.map(shown -> shown.problem(line.field()) + shown.told(line.field())).orElse("");
      line.wrong().setText(problem);
      line.wrong().setVisible(!problem.isEmpty());
      line.input().getAccessibleContext().setAccessibleDescription(problem);
    }
    revalidate();
    repaint();
  }

  /** The field that is filled in first. */
  public Optional<JComponent> first() {
    return lines.stream().findFirst().map(Line::input);
  }

  /** The field that is filled in first: the day, which stands there already selected. */
  public void focusFirst() {
    lines.stream()
        .filter(line -> line.field().kind() == Kind.DAY)
        .findFirst()
        .ifPresent(
            line -> {
              line.input().requestFocusInWindow();
              line.input().selectAll();
            });
  }
}
