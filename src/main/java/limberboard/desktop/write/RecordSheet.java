package limberboard.desktop.write;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.WriteModel;

/** Records what was written in the workspace's history, with words and a name. */
final class RecordSheet extends Sheet {
  private static final int MOST = 12;
  private final transient WriteModel model;
  private final JTextField said = new JTextField();
  private final JTextField author = new JTextField();
  private final Wrapped files = Text.quiet("");
  private final JButton record;

  RecordSheet(WriteModel model, Runnable away) {
    super(away);
    this.model = model;
    record = Buttons.main("Record", "write-record-do", this::record);
    said.setName("write-said");
    author.setName("write-author");
    Column column = column();
    column.add(Text.heading("Record it in the history"));
    Form form = new Form(10);
    form.line("What has changed", said, said);
    form.line("Who says so", author, author);
    column.add(form);
    column.add(files);
    column.add(Row.wrapping(8, record, Buttons.plain("Back to the text", "write-back", away)));
    When.typed(said, this::refresh);
    When.typed(author, this::refresh);
    Keys.focused(said, "ENTER", this::record);
    Keys.focused(author, "ENTER", this::record);
  }

  @Override
  void ready() {
    List<String> paths = model.saving().unrecorded();
    said.setText(model.current().map(page -> "Edit “" + page.title() + "”").orElse(""));
    said.selectAll();
    files.setText(
        paths.isEmpty()
            ? "Everything that was saved here is recorded."
            : "These files are recorded:\n"
                + String.join("\n", paths.subList(0, Math.min(MOST, paths.size())))
                + (paths.size() > MOST ? "\nand " + (paths.size() - MOST) + " more" : ""));
    if (author.getText().isBlank()) {
      model.saving().author(author::setText);
    }
    refresh();
  }

  private boolean canRecord() {
    return !said.getText().isBlank()
        && !author.getText().isBlank()
        && !model.saving().unrecorded().isEmpty();
  }

  private void refresh() {
    record.setEnabled(canRecord());
  }

  private void record() {
    if (canRecord()) {
      model.saving().record(said.getText().strip(), author.getText().strip());
      away();
    }
  }

  @Override
  JComponent begin() {
    return said;
  }
}
