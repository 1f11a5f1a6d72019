package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.trace.CautionsRead;
import limberboard.trace.CautionsRead.Form;

/**
 * The cautions of a symptom, alone on the screen before the first question. First whether there is
 * an emergency, where that hangs on a question; an emergency in full; the others in short.
 */
final class CautionsPanel extends JPanel {
  private static final int READABLE = 860;
  private final transient TraceModel model;
  private final Column column = new Column(12).padded(20, 26, 20, 26).atMost(READABLE);
  private final Wrapped title = Text.title("");
  private final transient AnswerKeys keys = new AnswerKeys(this, column);
  private transient Optional<Shown> shown = Optional.empty();
  private final JButton read;
  private final JButton whole;
  private final JButton back;
  private Row buttons = Row.wrapping(10);
  private boolean inFull;

  CautionsPanel(TraceModel model) {
    super(new BorderLayout());
    this.model = model;
    new FocusedText(title, column).named("cautions-title");
    read = Buttons.main("Read. Go on to the first question", "cautions-read", model::cautionsRead);
    whole = Buttons.plain("Whole text", "cautions-whole-first", this::turn);
    back = Buttons.plain("Another symptom", "cautions-leave", model::leave);
    Keys.within(this, "F7", this::turn);
    Keys.within(this, "F8", this::goOn);
    add(column.scrolling(), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  /** What is read takes the focus, or the question, so that no key answers or passes it unread. */
  JComponent first() {
    return isAsking() ? keys.question().map(JComponent.class::cast).orElse(title) : title;
  }

  List<JComponent> regions() {
    return List.of(first(), buttons);
  }

  private boolean isAsking() {
    return shown.filter(Shown::isAsking).isPresent();
  }

  /** What is shown; as long as it is equal, it stays as it is, and so does the focus in it. */
  private record Shown(
      String symptom, List<WorkCaution> cautions, CautionsRead read, boolean inFull) {
    boolean isAsking() {
      return !read.in(Form.QUESTION, cautions).isEmpty();
    }

    List<WorkCaution> in(Form form) {
      return read.in(form, cautions);
    }
  }

  private void turn() {
    if (!isAsking()) {
      inFull = !inFull;
      refresh();
    }
  }

  private void goOn() {
    if (!isAsking()) {
      model.cautionsRead();
    }
  }

  private void refresh() {
    if (model.stage() != Stage.CAUTIONS) {
      inFull = false;
      shown = Optional.empty();
      return;
    }
    String symptom = model.trace().map(trace -> trace.fault().page().title()).orElse("");
    Shown wanted = new Shown(symptom, model.cautions(), model.read(), inFull);
    if (shown.filter(wanted::equals).isPresent()) {
      return;
    }
    boolean turned = shown.isPresent();
    shown = Optional.of(wanted);
    column.removeAll();
    title.setText(symptom);
    column.add(title);
    List<WorkCaution> asked = wanted.in(Form.QUESTION);
    if (asked.isEmpty()) {
      tell(wanted);
    } else {
      ask(asked.get(0));
    }
    column.add(buttons);
    column.revalidate();
    column.repaint();
    if (turned && isShowing()) {
      first().requestFocusInWindow();
    }
  }

  private void ask(WorkCaution caution) {
    Wrapped question = Text.question(caution.question().orElse(""));
    column.add(Text.reading("Before anything else:"));
    column.add(question);
    column.add(Text.quiet("If you cannot tell, answer yes. Caution: " + caution.title() + "."));
    JButton yes = Buttons.large("Yes", "emergency-yes", () -> model.answerEmergency(caution, true));
    JButton no = Buttons.large("No", "emergency-no", () -> model.answerEmergency(caution, false));
    buttons = Row.wrapping(10, yes, no, back);
    keys.of(question, List.of(yes, no));
  }

  private void tell(Shown wanted) {
    column.add(Text.reading("Before anything else:"));
    wanted.in(Form.WHOLE).forEach(caution -> column.add(CautionBox.whole(caution)));
    List<WorkCaution> brief = wanted.in(Form.SHORT);
    if (!brief.isEmpty() && !inFull) {
      column.add(CautionBox.brief(brief));
    } else {
      brief.forEach(caution -> column.add(CautionBox.whole(caution)));
    }
    List<WorkCaution> folded = wanted.in(Form.FOLDED);
    if (!folded.isEmpty() && !inFull) {
      column.add(CautionBox.names(folded, wanted.read()::why));
    } else {
      folded.forEach(caution -> column.add(CautionBox.whole(caution)));
    }
    whole.setText(inFull ? "In short" : "Whole text");
    whole.setToolTipText(inFull ? "Back to the two lines of each (F7)" : "Of each (F7)");
    whole.setVisible(!brief.isEmpty() || !folded.isEmpty());
    buttons = Row.wrapping(10, read, whole, back);
  }
}
