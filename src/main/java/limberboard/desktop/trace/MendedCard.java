package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.upkeep.log.MendedEntry;
import limberboard.desktop.upkeep.log.MendedEntry.Mend;
import limberboard.trace.FaultCause;
import limberboard.trace.Trace;

/** The fault is mended: what it was, the line for the log, and what keeps it from coming back. */
final class MendedCard extends Docked {
  private final transient Function<FaultCause, List<String>> prevention;
  private final transient Consumer<String> openPage;
  private final MendedEntry entry;
  private final CaseOffer offer;
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final JButton again;
  private Optional<FaultCause> cause = Optional.empty();
  private transient Said said = new Said("", Optional.empty(), Optional.empty(), List.of());

  /**
   * A card.
   *
   * @param entry offers to write the mend into the boat's log
   * @param cases keeps it as a case
   * @param prevention says how often the mend's page wants looking at, in sentences
   * @param openPage opens a page
   */
  MendedCard(
      TraceModel model,
      MendedEntry entry,
      MendedCases cases,
      Function<FaultCause, List<String>> prevention,
      Consumer<String> openPage) {
    super(10);
    this.entry = entry;
    this.offer = new CaseOffer(cases);
    this.prevention = prevention;
    this.openPage = openPage;
    again =
        Buttons.main(
            "Trace another fault",
            "another-fault",
            () -> {
              offer.over();
              model.finish();
            });
    Keys.within(this, CaseOffer.KEY, offer::turn);
    JButton page =
        Buttons.plain(
            "Read the mend's page", () -> cause.ifPresent(c -> openPage.accept(c.mend())));
    JButton notYet = Buttons.plain("It is not mended after all", model::notMendedAfterAll);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, again, page, notYet));
    dock(sheet, foot);
  }

  /** What takes the focus: the line for the log; Enter in it writes nothing yet. */
  JComponent first() {
    return entry.first().orElse(again);
  }

  void show(Trace trace, Optional<FaultCause> mended) {
    cause = mended;
    entry.offer(
        mended
            .filter(found -> !found.isSomethingElse())
            .map(found -> new Mend(found.mend(), note(trace, found))));
    offer.offer(trace, mended);
    Said now =
        new Said(
            trace.fault().page().title(),
            mended.map(FaultCause::title),
            mended.map(FaultCause::mendTitle),
            mended.map(prevention).orElse(List.of()));
    if (!now.equals(said)) {
      said = now;
      fill(now);
    }
  }

  /** What the card says; while it stays the same, what is typed on the card keeps the focus. */
  private record Said(
      String symptom, Optional<String> cause, Optional<String> mend, List<String> prevention) {}

  private static String note(Trace trace, FaultCause found) {
    return trace.fault().page().title() + ": " + found.title();
  }

  private void fill(Said now) {
    sheet.removeAll();
    sheet.add(Text.title("Mended"));
    sheet.add(Text.reading(now.symptom() + "."));
    now.cause().ifPresent(found -> sheet.add(CheckCard.labelled("It was", found)));
    now.mend().ifPresent(done -> sheet.add(CheckCard.labelled("Done", done)));
    sheet.add(entry);
    sheet.add(offer);
    if (now.cause().isPresent()) {
      sheet.add(Text.caption("So that it does not come back"));
      if (now.prevention().isEmpty()) {
        sheet.add(Text.plain("The library gives no interval for this mend."));
      }
      now.prevention().forEach(sentence -> sheet.add(Text.plain(sentence)));
    }
    revalidate();
    repaint();
  }
}
