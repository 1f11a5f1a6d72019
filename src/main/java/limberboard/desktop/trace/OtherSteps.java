package limberboard.desktop.trace;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import limberboard.desktop.parts.Buttons;
import limberboard.trace.Alternative;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.words.Minutes;

/** A button that offers every other step than the one shown: other checks, mends, the yard. */
final class OtherSteps {
  private final TraceModel model;
  private final JButton button;
  private List<Alternative> others = List.of();

  OtherSteps(TraceModel model) {
    this.model = model;
    button =
        Buttons.plain(
            "Do something else …", "other-step", "Other checks, mends, or the yard", this::open);
  }

  JButton button() {
    return button;
  }

  /** Offers what there is besides the step that is shown. */
  void offer(Trace trace, NextStep shown) {
    others =
        trace.alternatives().stream()
            .filter(other -> !other.step().which().equals(shown.which()))
            .toList();
    button.setVisible(!others.isEmpty());
  }

  /** Whether there is any. */
  boolean isOffered() {
    return !others.isEmpty();
  }

  private void open() {
    open(button);
  }

  /** Offers them below something that is in sight. */
  void open(JComponent at) {
    JPopupMenu menu = new JPopupMenu("Do something else");
    for (Alternative other : others) {
      NextStep step = other.step();
      String words =
          step.text()
              + "  ("
              + step.kind()
              + ", "
              + Minutes.words(step.minutes())
              + ", in all about "
              + Minutes.words(other.expectedMinutes())
              + ")";
      JMenuItem item = new JMenuItem(words);
      item.addActionListener(e -> model.pick(step));
      menu.add(item);
    }
    menu.show(at, 0, at.getHeight());
  }
}
