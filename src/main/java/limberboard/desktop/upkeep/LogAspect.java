package limberboard.desktop.upkeep;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import limberboard.boat.LogWords;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sheet;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** The boat's log, and a form for what happens on board besides work. */
final class LogAspect implements UpkeepAspect {
  private static final int LEAST_WIDTH = 760;
  private final LogListModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTextField filter = new JTextField();
  private final LogRows rows = new LogRows();
  private final LogTable table = new LogTable(rows);
  private final Wrapped words = Text.quiet("");
  private final JComboBox<String> events =
      new JComboBox<>(LogListModel.EVENTS.toArray(String[]::new));
  private final Wrapped hint = Text.quiet("");
  private final EntryFields fields;
  private final JButton write;
  private final Sheet sheet = new Sheet(10);
  private boolean refreshing;

  /** The aspect. */
  LogAspect(UpkeepTools tools) {
    model = new LogListModel(tools.upkeep(), tools.log());
    fields = new EntryFields("log", this::refresh, model::write, model::clear);
    write = Buttons.main("Write into the log", model::write);
    write.setName("write-event");
    panel.setOpaque(false);
    fillSheet();
    panel.add(
        new Sides(
            LEAST_WIDTH,
            "Log",
            left(),
            "Add to it",
            sheet.scrolling(),
            "upkeep-log",
            0.64,
            tools.dividers()));
    model.onChange(this::refresh);
    refresh();
  }

  private void fillSheet() {
    events.setName("log-event");
    events.setRenderer(
        new DefaultListCellRenderer() {
          @Override
          public java.awt.Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String spoken = EntryWords.event((String) value);
            return super.getListCellRendererComponent(list, spoken, index, selected, focused);
          }
        });
    events.addActionListener(
        e -> {
          if (!refreshing) {
            model.event((String) events.getSelectedItem());
          }
        });
    Form what = new Form(8);
    what.line("What", events, events);
    JButton clear = Buttons.plain("Clear", model::clear);
    clear.setName("clear-event");
    sheet.add(Text.heading("Add to the log"));
    sheet.add(Text.quiet("Work is marked done under Due. Here is what else happens on board."));
    sheet.add(what);
    sheet.add(hint);
    sheet.add(fields);
    sheet.add(Row.wrapping(10, write, clear));
  }

  private JComponent left() {
    filter.setName("log-filter");
    filter.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Only lines with these words");
    filter.getAccessibleContext().setAccessibleName("Only lines with these words");
    Keys.focused(filter, "ESCAPE", () -> filter.setText(""));
    filter
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                model.filter(filter.getText());
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                model.filter(filter.getText());
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                model.filter(filter.getText());
              }
            });
    Column head = new Column(6).padded(0, 0, 0, 6);
    head.add(filter);
    head.add(words);
    JScrollPane scroller = new JScrollPane(table);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.add(head, BorderLayout.NORTH);
    left.add(scroller, BorderLayout.CENTER);
    return left;
  }

  private void refresh() {
    refreshing = true;
    rows.show(model.rows());
    table.widths();
    words.setText(count());
    Optional<EntryForm> form = model.form();
    form.ifPresent(
        shown -> {
          events.setSelectedItem(shown.work());
          hint.setText(hint(shown.work()));
          fields.show(shown, model.upkeep().boat().flatMap(Counted::lastHours));
        });
    write.setEnabled(model.canWrite());
    refreshing = false;
    panel.revalidate();
    panel.repaint();
  }

  private String count() {
    int all = model.size();
    if (all == 0) {
      return "Nothing in it yet. It is kept in the file log.csv in the boat’s folder.";
    } else if (rows.getRowCount() == all) {
      return all + (all == 1 ? " line" : " lines, the newest first");
    }
    return rows.getRowCount() + " of " + all + " lines have all these words";
  }

  private static String hint(String event) {
    return switch (event) {
      case LogWords.READING -> "The engine’s hours, or what was counted since the line before.";
      case LogWords.LAUNCHED -> "Her season afloat begins.";
      case LogWords.HAULED_OUT -> "Her season afloat ends.";
      case LogWords.NEW_METER -> "Hours are what the new meter shows; 0 if left out.";
      default -> "";
    };
  }

  @Override
  public String id() {
    return "log";
  }

  @Override
  public String title() {
    return "Log";
  }

  @Override
  public char mnemonic() {
    return 'G';
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(table, sheet);
  }
}
