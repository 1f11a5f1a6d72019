package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.trace.FaultCheck;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;
import limberboard.words.Sentences;

/** What has been answered so far; each answer can be changed or taken back. */
final class TrailPanel extends JPanel {
  private static final int HEAD_GAP = 8;
  private final transient TraceModel model;
  private final Column column = new Column(8).padded(2, 2, 8, 10);

  private transient Optional<Shown> shown = Optional.empty();

  TrailPanel(TraceModel model) {
    super(new BorderLayout(0, 4));
    this.model = model;
    setOpaque(false);
    Column head = new Column(0);
    head.add(Text.heading("Your answers so far"));
    add(head, BorderLayout.NORTH);
    add(column.scrolling(), BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName("Your answers so far");
    model.onChange(this::refresh);
    refresh();
  }

  /** How high it has to be at this width to show everything. */
  int wantedHeight(int width) {
    column.setSize(width, Math.max(1, column.getHeight()));
    return getComponent(0).getPreferredSize().height
        + column.getLayout().preferredLayoutSize(column).height
        + HEAD_GAP;
  }

  /** What is shown; as long as it is equal, it stays as it is, and so does the focus in it. */
  private record Shown(Optional<Trace> trace, boolean besideQuestion) {}

  private void refresh() {
    Optional<Shown> wanted = Optional.of(new Shown(model.trace(), model.stage() == Stage.CHECK));
    if (wanted.equals(shown)) {
      return;
    }
    shown = wanted;
    column.removeAll();
    model.trace().ifPresent(this::fill);
    column.revalidate();
    column.repaint();
  }

  private void fill(Trace trace) {
    List<TrailEntry> trail = trace.trail();
    if (trail.isEmpty()) {
      column.add(Text.quiet("None yet. Each answer will stand here, and can be changed."));
    }
    for (int i = trail.size() - 1; i >= 0; i--) {
      column.add(row(trace, trail.get(i), i + 1));
    }
  }

  private JComponent row(Trace trace, TrailEntry entry, int number) {
    Column row = new Column(1);
    row.setName("trail-" + number);
    Column words = new Column(1);
    words.add(
        Text.strong(
            number
                + ". "
                + entry.text()
                + "  "
                + Sentences.capital(Sentences.spoken(entry.answer()))));
    words.add(Text.quiet(entry.changed()));
    JButton back = Buttons.plain("Take back", () -> takeBack(entry.step()));
    back.getAccessibleContext().setAccessibleName("Take back answer " + number);
    back.setName("take-back-" + number);
    List<JComponent> buttons = new ArrayList<>();
    if (entry.step() instanceof TrailStep.Answered
        || entry.step() instanceof TrailStep.CouldNotTell) {
      buttons.add(changeButton(trace, entry, number));
    }
    buttons.add(back);
    if (model.stage() == Stage.CHECK) {
      row.add(Row.worded(8, words, buttons.toArray(JComponent[]::new)));
    } else {
      row.add(words);
      row.add(Row.wrapping(8, buttons.toArray(JComponent[]::new)));
    }
    return row;
  }

  private JButton changeButton(Trace trace, TrailEntry entry, int number) {
    JButton[] made = new JButton[1];
    JButton change = Buttons.plain("Change", () -> open(made[0], trace, entry));
    made[0] = change;
    change.setName("change-" + number);
    change.getAccessibleContext().setAccessibleName("Change answer " + number);
    return change;
  }

  private void open(JButton at, Trace trace, TrailEntry entry) {
    JPopupMenu menu = new JPopupMenu("Change the answer");
    trace.fault().checks().stream()
        .filter(check -> check.id().equals(entry.step().id()))
        .findFirst()
        .ifPresent(check -> fill(menu, check));
    menu.show(at, 0, at.getHeight());
  }

  private void fill(JPopupMenu menu, FaultCheck check) {
    for (String answer : check.answers()) {
      JMenuItem item = new JMenuItem(Sentences.capital(Sentences.spoken(answer)));
      item.addActionListener(e -> model.answer(check.id(), answer));
      menu.add(item);
    }
    JMenuItem unsure = new JMenuItem("Can't tell");
    unsure.addActionListener(e -> model.cantTell(check.id()));
    menu.add(unsure);
  }

  private void takeBack(TrailStep step) {
    if (step instanceof TrailStep.MendFailed) {
      model.takeBackMend(step.id());
    } else if (step instanceof TrailStep.MadeSafe) {
      model.takeBackSafe(step.id());
    } else {
      model.takeBack(step.id());
    }
  }
}
