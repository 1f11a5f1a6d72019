package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sheet;
import limberboard.desktop.parts.Text;
import limberboard.trace.FaultCause;
import limberboard.trace.Trace;

/** The fault is mended: what it was, and what keeps it from coming back. */
final class MendedCard extends Docked {
  private final transient Function<FaultCause, List<String>> prevention;
  private final transient Consumer<String> openPage;
  private final Sheet sheet = Sheet.readable(10);
  private final JButton again;
  private Optional<FaultCause> cause = Optional.empty();

  /**
   * A card.
   *
   * @param prevention says how often the mend's page wants looking at, in sentences
   * @param openPage opens a page
   */
  MendedCard(
      TraceModel model, Function<FaultCause, List<String>> prevention, Consumer<String> openPage) {
    super(10);
    this.prevention = prevention;
    this.openPage = openPage;
    again = Buttons.main("Trace another fault", model::finish);
    again.setName("another-fault");
    JButton page =
        Buttons.plain(
            "Read the mend's page", () -> cause.ifPresent(c -> openPage.accept(c.mend())));
    JButton notYet = Buttons.plain("It is not mended after all", model::notMendedAfterAll);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, again, page, notYet));
    dock(sheet, foot);
  }

  JButton first() {
    return again;
  }

  void show(Trace trace, Optional<FaultCause> mended) {
    cause = mended;
    sheet.removeAll();
    sheet.add(Text.title("Mended"));
    sheet.add(Text.reading(trace.fault().page().title() + "."));
    mended.ifPresent(this::fill);
    revalidate();
    repaint();
  }

  private void fill(FaultCause found) {
    sheet.add(CheckCard.labelled("It was", found.title()));
    sheet.add(CheckCard.labelled("Done", found.mendTitle()));
    List<String> sentences = prevention.apply(found);
    sheet.add(Text.caption("So that it does not come back"));
    if (sentences.isEmpty()) {
      sheet.add(Text.plain("The library gives no interval for this mend."));
    }
    sentences.forEach(sentence -> sheet.add(Text.plain(sentence)));
  }
}
