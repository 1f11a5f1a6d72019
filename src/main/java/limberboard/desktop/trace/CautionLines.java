package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.trace.CautionsRead;
import limberboard.trace.CautionsRead.Form;

/**
 * Cautions of a trace or drill under way: those that nobody has read yet in short, the others by
 * name in one line. Reading folds them, and it is seen here at once.
 */
public final class CautionLines extends Column {
  private final transient CautionReading model;
  private final String called;
  private final transient Runnable whole;
  private final transient Runnable afterwards;
  private List<WorkCaution> cautions = List.of();
  private transient Optional<Shown> shown = Optional.empty();

  private record Shown(List<WorkCaution> cautions, CautionsRead read) {}

  /**
   * No cautions yet.
   *
   * @param model which of them are read
   * @param called before the names of its buttons
   * @param whole shows the whole text of each
   * @param afterwards puts the focus where one goes on, when a button that had it is gone
   */
  public CautionLines(CautionReading model, String called, Runnable whole, Runnable afterwards) {
    super(0);
    this.model = model;
    this.called = called;
    this.whole = whole;
    this.afterwards = afterwards;
    setName(called);
    model.onChange(this::refresh);
  }

  /** Shows these. */
  public void show(List<WorkCaution> wanted) {
    cautions = List.copyOf(wanted);
    refresh();
  }

  private void refresh() {
    CautionsRead read = model.read();
    Optional<Shown> now = Optional.of(new Shown(cautions, read));
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    removeAll();
    setVisible(!cautions.isEmpty());
    if (!cautions.isEmpty()) {
      add(box(read));
    }
    revalidate();
    repaint();
  }

  private CautionBox box(CautionsRead read) {
    List<WorkCaution> folded = read.in(Form.FOLDED, cautions);
    List<WorkCaution> unread =
        cautions.stream().filter(caution -> !folded.contains(caution)).toList();
    JComponent[] controls = controls(unread, folded).toArray(JComponent[]::new);
    if (unread.isEmpty()) {
      return CautionBox.names(folded, read::why, controls);
    }
    return CautionBox.brief(
        unread,
        folded.isEmpty()
            ? Row.wrapping(8, controls)
            : CautionBox.line(folded, read::why, controls));
  }

  private List<JButton> controls(List<WorkCaution> unread, List<WorkCaution> folded) {
    List<JButton> controls = new ArrayList<>();
    if (!unread.isEmpty()) {
      controls.add(
          small(
              Buttons.plain(
                  model.readTitle(), called + "-read", model.readTip(), () -> read(unread))));
    }
    String tip = "Everything that is to be known of each (F7)";
    controls.add(small(Buttons.plain("Whole text", called + "-whole", tip, whole)));
    folded.stream()
        .filter(caution -> caution.question().isPresent())
        .map(this::again)
        .forEach(controls::add);
    return controls;
  }

  private JButton again(WorkCaution caution) {
    String asked = caution.question().orElse("");
    return small(
        Buttons.plain("Ask again", called + "-again", asked, () -> model.askAgain(caution)));
  }

  private static JButton small(JButton button) {
    button.putClientProperty("FlatLaf.style", "margin: 1,8,1,8; arc: 8");
    return button;
  }

  private void read(List<WorkCaution> unread) {
    model.read(unread);
    afterwards.run();
  }
}
