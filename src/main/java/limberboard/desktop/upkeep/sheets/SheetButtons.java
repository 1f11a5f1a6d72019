package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.read.Papers;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;

/** What takes a sheet out of the window: to the printer, as PDF, as CSV. */
final class SheetButtons {
  private final Papers papers;
  private final Supplier<Optional<Made>> sheet;
  private final JButton print;
  private final JButton pdf;
  private final JButton csv;

  /**
   * Buttons.
   *
   * @param name begins their names
   * @param sheet the sheet as it is now; empty until it has been made
   */
  SheetButtons(String name, Papers papers, Supplier<Optional<Made>> sheet) {
    this.papers = papers;
    this.sheet = sheet;
    print = Buttons.plain("Print …", name + "-print", this::print);
    pdf = Buttons.plain("Save as PDF …", name + "-pdf", this::savePdf);
    csv = Buttons.plain("Save as CSV …", name + "-csv", "A table for a spreadsheet", this::saveCsv);
  }

  /** All of them, from left to right. */
  List<JButton> all() {
    return List.of(print, pdf, csv);
  }

  /** The one that a person most likely wants. */
  JButton pdf() {
    return pdf;
  }

  /** Whether there is something to take out. */
  void setEnabled(boolean enabled) {
    all().forEach(button -> button.setEnabled(enabled));
  }

  /** What prints; empty while there is nothing. */
  Optional<Runnable> printing() {
    return print.isEnabled() ? Optional.of(this::print) : Optional.empty();
  }

  void print() {
    sheet.get().ifPresent(made -> papers.print(made.name(), made.paper()));
  }

  void savePdf() {
    sheet.get().ifPresent(made -> papers.save(made.name(), made.paper()));
  }

  private void saveCsv() {
    sheet.get().ifPresent(made -> papers.saveText(made.name() + ".csv", made.csv()));
  }
}
