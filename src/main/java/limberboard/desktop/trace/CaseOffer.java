package limberboard.desktop.trace;

import java.util.Optional;
import javax.swing.JButton;
import limberboard.boat.RecordedCase;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.MendedCases.Mended;
import limberboard.trace.FaultCause;
import limberboard.trace.Trace;

/** Offers to keep a mended fault as a case, and to take it out again. Writes nothing unasked. */
final class CaseOffer extends Column {
  /** Keeps the case, or takes it out again. */
  static final String KEY = "control K";

  private final transient MendedCases cases;
  private final Wrapped words = Text.plain("");
  private final JButton keep;
  private final JButton takeOut;
  private transient Optional<Trace> trace = Optional.empty();
  private transient Optional<FaultCause> cause = Optional.empty();

  CaseOffer(MendedCases cases) {
    super(8);
    this.cases = cases;
    String key = " (" + Keys.spoken(KEY) + ")";
    keep = Buttons.plain("Keep as a case", "keep-case", "For the next owner" + key, this::keep);
    takeOut =
        Buttons.plain("Take the case out again", "take-case-out", "Undo" + key, this::takeOut);
    words.setName("case-words");
    add(Text.caption("For the next owner"));
    add(words);
    add(Row.wrapping(10, keep, takeOut));
    cases.onChange(this::refresh);
  }

  /** Offers this fault. */
  void offer(Trace mended, Optional<FaultCause> was) {
    trace = Optional.of(mended);
    cause = was;
    refresh();
  }

  /** The key was pressed: the one or the other. */
  void turn() {
    if (takeOut.isVisible()) {
      takeOut();
    } else {
      keep();
    }
  }

  /** The trace is over. */
  void over() {
    mended().ifPresent(cases::over);
  }

  private Optional<Mended> mended() {
    return trace.map(known -> Mended.of(known, cause));
  }

  private void keep() {
    trace.ifPresent(known -> cases.keep(known, cause));
  }

  private void takeOut() {
    mended().ifPresent(cases::takeOut);
  }

  private void refresh() {
    Optional<RecordedCase> kept = mended().flatMap(cases::kept);
    boolean focused = keep.isFocusOwner() || takeOut.isFocusOwner();
    keep.setVisible(kept.isEmpty());
    takeOut.setVisible(kept.isPresent());
    keep.setEnabled(!cases.isBusy());
    takeOut.setEnabled(!cases.isBusy());
    if (focused) {
      (kept.isPresent() ? takeOut : keep).requestFocusInWindow();
    }
    words.setText(
        kept.map(each -> "Kept as the case " + each.id() + ". " + after(each))
            .orElse(
                "A case keeps the model, the year, the answers and the cause, and no name. It makes"
                    + " the next trace better."));
    revalidate();
    repaint();
  }

  private static String after(RecordedCase kept) {
    return kept.isOpen()
        ? "It is open until somebody says what it was."
        : "What it took and cost can be written into it later.";
  }
}
