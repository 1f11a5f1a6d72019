package limberboard.desktop.upkeep.log;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.Papers;
import limberboard.desktop.upkeep.entry.UndoButtons;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.print.page.CutPage;
import limberboard.words.CountWords;

/** The boat's log, each line of which can be corrected or deleted, and a form that adds to it. */
public final class LogAspect implements View {
  private static final int LEAST_WIDTH = 760;
  private final LogListModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTextField filter = new JTextField();
  private final LogTable table = new LogTable("upkeep-log-table", 170, 270, 66, 110, 190);
  private final Wrapped words = Text.quiet("");
  private final LogFormPanel form;
  private final JButton correct;
  private final JButton delete;
  private final JButton print;
  private final JButton save;
  private final Papers papers;
  private final UndoButtons undo;
  private final Sides sides;

  /** The aspect. */
  public LogAspect(UpkeepTools tools, LogListModel model) {
    this.model = model;
    this.papers = tools.place().papers();
    form = new LogFormPanel(model, this::backToTable);
    correct =
        Buttons.plain(
            "Correct …",
            "correct-line",
            "Fills the form with the selected line (Enter or F2)",
            this::correct);
    delete = Buttons.plain("Delete", "delete-line", this::delete);
    delete.setToolTipText("Takes the selected line out of the log (Delete); it can be undone");
    print = Buttons.plain("Print …", "log-print", this::printLog);
    save = Buttons.plain("Save as PDF …", "log-pdf", () -> give(papers::save));
    undo = new UndoButtons("-here", tools.log(), this::backToTable);
    panel.setOpaque(false);
    sides =
        new Sides(
            LEAST_WIDTH,
            "Log",
            left(),
            "Write",
            form,
            "upkeep-log",
            0.64,
            tools.place().dividers());
    panel.add(sides);
    Keys.focused(table, "ENTER", this::correct);
    Keys.focused(table, "F2", this::correct);
    Keys.focused(table, "DELETE", this::delete);
    table.getSelectionModel().addListSelectionListener(e -> enable());
    model.afterWriting(this::afterWriting);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent left() {
    filter.setName("log-filter");
    filter.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Only lines with these words");
    filter.getAccessibleContext().setAccessibleName("Only lines with these words");
    Keys.focused(filter, "ESCAPE", () -> filter.setText(""));
    When.typed(filter, () -> model.filter(filter.getText()));
    Column head = new Column(6).padded(0, 0, 0, 6);
    head.add(filter);
    head.add(words);
    Column foot = new Column(0).padded(0, 2, 2, 6);
    foot.add(Row.wrapping(8, correct, delete, undo.undo(), undo.redo(), print, save));
    JScrollPane scroller = new JScrollPane(table);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.add(head, BorderLayout.NORTH);
    left.add(scroller, BorderLayout.CENTER);
    left.add(foot, BorderLayout.SOUTH);
    return left;
  }

  private Optional<LogEntry> selected() {
    int row = table.getSelectedRow();
    return row >= 0 && row < model.lines().size()
        ? Optional.of(model.lines().get(row).entry())
        : Optional.empty();
  }

  private void correct() {
    selected()
        .ifPresent(
            entry -> {
              model.correct(entry);
              sides.showOther();
              form.focusFirst();
            });
  }

  private void delete() {
    selected().ifPresent(model::delete);
    Later.focus(table);
  }

  /** After writing, the focus is where the person was: in the table, or in the form. */
  private void afterWriting(boolean corrected) {
    if (corrected) {
      backToTable();
    } else {
      form.focusFirst();
    }
  }

  private void backToTable() {
    sides.showMain();
    Later.focus(table);
  }

  private void printLog() {
    give(papers::print);
  }

  /** The sheet is made of what is shown, here and now, and laid out off the event thread. */
  private void give(BiConsumer<String, Supplier<CutPage>> to) {
    Optional<Boat> boat = model.upkeep().boat();
    boat.ifPresent(
        known -> {
          CutPage sheet = LogPaper.of(known, table.rows(), count());
          to.accept(LogPaper.name(boat), () -> sheet);
        });
  }

  @Override
  public Optional<Runnable> print() {
    return table.getRowCount() > 0 ? Optional.of(this::printLog) : Optional.empty();
  }

  private void enable() {
    boolean any = table.getSelectedRow() >= 0;
    correct.setEnabled(any);
    delete.setEnabled(any);
  }

  private void refresh() {
    table.show(model.rows());
    words.setText(count());
    form.refresh();
    enable();
    panel.revalidate();
    panel.repaint();
  }

  private String count() {
    int all = model.size();
    if (all == 0) {
      return "Nothing in it yet. It is kept in the file log.csv in the boat’s folder.";
    } else if (table.getRowCount() == all) {
      return CountWords.of(all, "line", "lines, the newest first");
    }
    return table.getRowCount() + " of " + all + " lines have all these words";
  }

  @Override
  public Name name() {
    return new Name("log", "Log", 'G');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(table, form.region());
  }
}
