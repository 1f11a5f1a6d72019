package limberboard.desktop.trace;

import java.awt.Rectangle;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;
import limberboard.words.Sentences;

/**
 * What a check that comes first for safety asks for is made safe: what to do, and a button that
 * says that it is done. There is no other way on; the focus goes to the way back, so that no key
 * declares it done by chance.
 */
final class SafetyCard extends Docked {
  private final transient TraceModel model;
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final JButton done;
  private final JButton back;
  private final CautionLines cautions;
  private String check = "";

  /**
   * A card.
   *
   * @param whole shows the whole text of all cautions
   */
  SafetyCard(TraceModel model, Runnable whole) {
    super(10);
    this.model = model;
    this.cautions =
        new CautionLines(model, "safety-cautions", whole, () -> first().requestFocusInWindow());
    done =
        Buttons.main(
            "It is done, and it is safe now", "made-safe", () -> this.model.madeSafe(check));
    back =
        Buttons.plain("Back to the question", "back-to-question", () -> this.model.takeBack(check));
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, done, back));
    dock(sheet, foot);
  }

  /** The button that takes the focus when the card comes up. */
  JButton first() {
    return back;
  }

  void show(Trace trace, MakeSafe step) {
    check = step.id();
    sheet.removeAll();
    sheet.add(Text.quiet("For safety. There is no other step before it."));
    cautions.show(model.cautions(step));
    sheet.add(cautions);
    sheet.add(Text.question(step.text()));
    sheet.add(Text.reading(step.how()));
    trace.trail().stream()
        .filter(entry -> isAnswer(entry, step))
        .findFirst()
        .ifPresent(
            entry ->
                sheet.add(
                    CheckCard.labelled(
                        "Your answer",
                        entry.text()
                            + " "
                            + Sentences.capital(Sentences.spoken(entry.answer()))
                            + ".")));
    RemarkBox.addTo(sheet, trace);
    sheet.add(CheckCard.labelled("Why this", step.why()));
    sheet.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    revalidate();
    repaint();
  }

  private static boolean isAnswer(TrailEntry entry, MakeSafe step) {
    return entry.step().id().equals(step.id()) && !(entry.step() instanceof TrailStep.MendFailed);
  }
}
