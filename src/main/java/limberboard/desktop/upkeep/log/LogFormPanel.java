package limberboard.desktop.upkeep.log;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.Counted;
import limberboard.desktop.upkeep.entry.EntryFields;
import limberboard.desktop.upkeep.entry.EntryWords;
import limberboard.library.value.LogEvents;

/** A form that adds a line to the log or corrects one; what writes it stays in sight. */
final class LogFormPanel extends Docked {
  private final transient LogListModel model;
  private final transient Runnable left;
  private final JComboBox<String> kinds =
      new JComboBox<>(LogListModel.KINDS.toArray(String[]::new));
  private final Wrapped heading = Text.heading("");
  private final Wrapped hint = Text.quiet("");
  private final Column work = new Column(0);
  private final WorkField works;
  private final EntryFields fields;
  private final JButton write;
  private final JButton clear;
  private final RaisedColumn sheet = new RaisedColumn(10);
  private boolean refreshing;

  /**
   * A form.
   *
   * @param left is called when a correction is given up
   */
  LogFormPanel(LogListModel model, Runnable left) {
    super(8);
    this.model = model;
    this.left = left;
    fields = new EntryFields("log", this::refresh, model::write, this::leave);
    works = new WorkField(model, this::toFields);
    write = Buttons.main("Write into the log", "write-event", model::write);
    clear = Buttons.plain("Clear", "clear-event", this::leave);
    kinds.setName("log-event");
    kinds.setMaximumRowCount(LogListModel.KINDS.size());
    kinds.setRenderer(new ItemWords<>(LogFormPanel::words));
    kinds.addActionListener(
        e -> {
          if (!refreshing) {
            model.event((String) kinds.getSelectedItem());
          }
        });
    Form what = new Form(8);
    what.line("What", kinds, kinds);
    Form which = new Form(8);
    which.line("Which work", works.input(), works);
    work.add(which);
    sheet.add(heading);
    sheet.add(what);
    sheet.add(hint);
    sheet.add(work);
    sheet.add(fields);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, write, clear));
    dock(sheet, foot);
  }

  private static String words(String kind) {
    return switch (kind) {
      case LogDraft.WORK -> "Work was done";
      case LogEvents.LOOKED_AGAIN -> "Work was looked at again";
      default -> EntryWords.event(kind);
    };
  }

  JComponent region() {
    return sheet;
  }

  /** Puts the focus into the first field. */
  void focusFirst() {
    Later.run(this::toFields);
  }

  private void toFields() {
    Later.show(fields);
    fields.focusFirst();
  }

  private void leave() {
    boolean correcting = model.isCorrecting();
    model.clear();
    if (correcting) {
      left.run();
    } else {
      focusFirst();
    }
  }

  /** Shows what the model has. */
  void refresh() {
    refreshing = true;
    Optional<LogDraft> draft = model.draft();
    draft.ifPresent(this::show);
    write.setEnabled(model.canWrite());
    refreshing = false;
    revalidate();
    repaint();
  }

  private void show(LogDraft draft) {
    boolean correcting = draft.original().isPresent();
    heading.setText(correcting ? "Correct the line" : "Write into the log");
    write.setText(correcting ? "Write the correction" : "Write into the log");
    clear.setText(correcting ? "Cancel" : "Clear");
    kinds.setSelectedItem(draft.kind());
    hint.setText(hint(draft.kind()));
    hint.setVisible(!hint.getText().isEmpty());
    work.setVisible(draft.needsWork());
    works.refresh(draft);
    fields.show(draft.form(), model.upkeep().boat().flatMap(Counted::lastHours));
  }

  private static String hint(String kind) {
    return switch (kind) {
      case LogDraft.WORK -> "Any work that fits her, also such as has no interval.";
      case LogEvents.READING ->
          "The engine’s hours, what was counted since the line before, or a remark of any kind.";
      case LogEvents.LAUNCHED -> "Her season afloat begins.";
      case LogEvents.HAULED_OUT -> "Her season afloat ends.";
      case LogEvents.NEW_METER -> "Hours are what the new meter shows; 0 if left out.";
      default -> "";
    };
  }
}
