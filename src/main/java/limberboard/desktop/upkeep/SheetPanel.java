package limberboard.desktop.upkeep;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.HierarchyEvent;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.read.TextSaver;
import limberboard.desktop.upkeep.SheetModel.HasSheet;
import limberboard.desktop.upkeep.SheetModel.Made;

/** A sheet to be read, with what can be chosen above it, and what saves it. */
final class SheetPanel extends JPanel {
  private final transient SheetModel<?, ?> model;
  private final transient SheetReader reader;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final Wrapped words = Text.reading("");
  private final JButton pdf;
  private final JButton csv;

  /**
   * A panel.
   *
   * @param name begins the names of the buttons
   * @param choices what can be chosen, from left to right
   */
  SheetPanel(String name, SheetModel<?, ?> model, UpkeepTools tools, JComponent... choices) {
    super(new BorderLayout(0, 8));
    this.model = model;
    setOpaque(false);
    reader = tools.sheets().get();
    TextSaver texts = new TextSaver(tools.background(), tools.notices(), tools.askFile());
    pdf =
        Buttons.plain(
            "Save as PDF …",
            () -> sheet().ifPresent(made -> tools.saver().save(made.name(), made.paper())));
    pdf.setName(name + "-pdf");
    csv =
        Buttons.plain(
            "Save as CSV …", () -> sheet().ifPresent(made -> texts.save(made.name(), made.csv())));
    csv.setName(name + "-csv");
    csv.setToolTipText("A table for a spreadsheet");
    add(tools(choices), BorderLayout.NORTH);
    add(shown, BorderLayout.CENTER);
    Column empty = new Column(0).padded(24, 8, 8, 8);
    empty.add(words);
    shown.setOpaque(false);
    shown.add(empty, "words");
    shown.add(reader.pane(), "sheet");
    addHierarchyListener(
        e -> {
          if ((e.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
            model.attend(isShowing());
          }
        });
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent tools(JComponent... choices) {
    JComponent[] all = new JComponent[choices.length + 2];
    System.arraycopy(choices, 0, all, 0, choices.length);
    all[choices.length] = pdf;
    all[choices.length + 1] = csv;
    Column column = new Column(0);
    column.add(Row.wrapping(8, all));
    return column;
  }

  /** What the keyboard scrolls; while there is nothing to scroll, a button. */
  JComponent region() {
    return reader.pane().isVisible() ? reader.pane().region() : pdf;
  }

  private Optional<Made> sheet() {
    return model.made().map(HasSheet::sheet);
  }

  private void refresh() {
    Optional<Made> sheet = sheet();
    String nothing = sheet.map(Made::nothing).orElse("Working it out …");
    words.setText(nothing);
    pdf.setEnabled(sheet.isPresent());
    csv.setEnabled(sheet.isPresent());
    sheet.filter(made -> made.nothing().isEmpty()).ifPresent(made -> reader.show(made.screen()));
    cards.show(shown, nothing.isEmpty() ? "sheet" : "words");
  }
}
