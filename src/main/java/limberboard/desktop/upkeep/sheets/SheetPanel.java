package limberboard.desktop.upkeep.sheets;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PageAction;
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
  private final transient SheetButtons buttons;

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
    buttons = new SheetButtons(name, tools.place().papers(), this::sheet);
    reader.pane().offer(new PageAction("Print …", "control P", buttons::print));
    reader.pane().offer(new PageAction("Save as PDF …", "control S", buttons::savePdf));
    Keys.within(this, "control S", buttons::savePdf);
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
    column.add(new Tools(name + "-more", 8, List.of(choices), buttons.all()));
    return column;
  }

  /** Shows the beginning of the sheet. */
  void toTop() {
    reader.pane().toTop();
  }

  /** Asks where to, and saves the sheet as PDF. */
  void savePdf() {
    buttons.savePdf();
  }

  /** Prints the sheet; empty while there is none. */
  Optional<Runnable> printing() {
    return buttons.printing();
  }

  /** Searches in the sheet. */
  Optional<Place.Find> finding() {
    return reader.pane().isVisible() ? Optional.of(reader.pane().finding()) : Optional.empty();
  }

  /** What the keyboard scrolls; while there is nothing to scroll, a button. */
  JComponent region() {
    return reader.pane().isVisible() ? reader.pane().region() : buttons.pdf();
  }

  private Optional<Made> sheet() {
    return model.made().map(HasSheet::sheet);
  }

  private void refresh() {
    Optional<Made> sheet = sheet();
    String nothing = sheet.map(Made::nothing).orElse("Working it out …");
    words.setText(nothing);
    boolean something = sheet.filter(made -> !made.screen().parts().isEmpty()).isPresent();
    buttons.setEnabled(something);
    sheet.filter(made -> made.nothing().isEmpty()).ifPresent(made -> reader.show(made.screen()));
    boolean hidden = !reader.pane().isVisible();
    cards.show(shown, nothing.isEmpty() ? "sheet" : "words");
    if (hidden && reader.pane().isVisible()) {
      Later.run(this::scrollWithKeys);
    }
  }

  /** Whoever came before the sheet was there waits at a button. */
  private void scrollWithKeys() {
    if (buttons.pdf().isFocusOwner()) {
      region().requestFocusInWindow();
    }
  }
}
