package limberboard.desktop.trace;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import limberboard.desktop.parts.Buttons;
import limberboard.library.Minutes;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/** A button that offers every other step than the one shown: other checks, mends, the yard. */
final class OtherSteps {
  private final TraceModel model;
  private final JButton button;
  private List<NextStep> others = List.of();

  OtherSteps(TraceModel model) {
    this.model = model;
    button = Buttons.plain("Do something else …", this::open);
    button.setName("other-step");
    button.setToolTipText("Other checks, mends, or the yard");
  }

  JButton button() {
    return button;
  }

  /** Offers what there is besides the step that is shown. */
  void offer(Trace trace, NextStep shown) {
    others =
        trace.alternatives().stream()
            .map(Trace.Alternative::step)
            .filter(step -> !(step.kind() + step.id()).equals(shown.kind() + shown.id()))
            .toList();
    button.setVisible(!others.isEmpty());
  }

  private void open() {
    JPopupMenu menu = new JPopupMenu("Do something else");
    for (NextStep step : others) {
      String words = step.text() + "  (" + step.kind() + ", " + Minutes.words(step.minutes()) + ")";
      JMenuItem item = new JMenuItem(words);
      item.addActionListener(e -> model.pick(step));
      menu.add(item);
    }
    menu.show(button, 0, button.getHeight());
  }
}
