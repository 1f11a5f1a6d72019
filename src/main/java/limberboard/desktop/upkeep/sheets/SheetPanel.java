package limberboard.desktop.upkeep.sheets;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PageAction;
import limberboard.desktop.read.Papers;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepTools;

/** A sheet to be read, with what can be chosen above it, and what saves it. */
final class SheetPanel extends JPanel {
  private final transient SheetModel<?, ?> model;
  private final transient SheetReader reader;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final Wrapped words = Text.reading("");
  private final transient Papers papers;
  private final JButton print;
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
    reader = tools.sheets();
    papers = tools.place().papers();
    print = Buttons.plain("Print …", name + "-print", this::print);
    pdf = Buttons.plain("Save as PDF …", name + "-pdf", this::savePdf);
    csv = Buttons.plain("Save as CSV …", name + "-csv", "A table for a spreadsheet", this::saveCsv);
    reader.pane().offer(new PageAction("Print …", "control P", this::print));
    reader.pane().offer(new PageAction("Save as PDF …", "control S", this::savePdf));
    add(tools(name, choices), BorderLayout.NORTH);
    add(shown, BorderLayout.CENTER);
    Column empty = new Column(0).padded(24, 8, 8, 8);
    empty.add(words);
    shown.setOpaque(false);
    shown.add(empty, "words");
    shown.add(reader.pane(), "sheet");
    When.showing(this, () -> model.attend(isShowing()));
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent tools(String name, JComponent... choices) {
    Column column = new Column(0);
    column.add(new Tools(name + "-more", 8, List.of(choices), List.of(print, pdf, csv)));
    return column;
  }

  private void print() {
    sheet().ifPresent(made -> papers.print(made.name(), made.paper()));
  }

  private void savePdf() {
    sheet().ifPresent(made -> papers.save(made.name(), made.paper()));
  }

  private void saveCsv() {
    sheet().ifPresent(made -> papers.saveText(made.name() + ".csv", made.csv()));
  }

  /** Prints the sheet; empty while there is none. */
  Optional<Runnable> printing() {
    return print.isEnabled() ? Optional.of(this::print) : Optional.empty();
  }

  /** Searches in the sheet. */
  Optional<Place.Find> finding() {
    return reader.pane().isVisible() ? Optional.of(reader.pane().finding()) : Optional.empty();
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
    boolean something = sheet.filter(made -> !made.screen().parts().isEmpty()).isPresent();
    print.setEnabled(something);
    pdf.setEnabled(something);
    csv.setEnabled(something);
    sheet.filter(made -> made.nothing().isEmpty()).ifPresent(made -> reader.show(made.screen()));
    boolean hidden = !reader.pane().isVisible();
    cards.show(shown, nothing.isEmpty() ? "sheet" : "words");
    if (hidden && reader.pane().isVisible()) {
      Later.run(this::scrollWithKeys);
    }
  }

  /** Whoever came before the sheet was there waits at a button. */
  private void scrollWithKeys() {
    if (pdf.isFocusOwner()) {
      region().requestFocusInWindow();
    }
  }
}
