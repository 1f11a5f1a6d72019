package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.words.CountWords;
import limberboard.words.DayText;

/** Offers to go on with traces of the chosen boat that were begun on an earlier day. */
final class KeptList extends Column {
  private final transient TraceModel model;
  private transient Optional<List<KeptTrace>> shown = Optional.empty();

  KeptList(TraceModel model) {
    super(6);
    this.model = model;
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Optional<List<KeptTrace>> wanted = Optional.of(model.keptTraces());
    if (wanted.equals(shown)) {
      return;
    }
    shown = wanted;
    removeAll();
    setVisible(!wanted.get().isEmpty());
    if (isVisible()) {
      add(Text.heading("Go on with"));
    }
    wanted.get().forEach(trace -> add(line(trace)));
    revalidate();
    repaint();
  }

  private Column line(KeptTrace trace) {
    String title = model.symptomTitle(trace.symptom());
    JButton goOn =
        Buttons.plain("Go on", "go-on-" + trace.symptom(), () -> model.start(trace.symptom()));
    goOn.getAccessibleContext().setAccessibleName("Go on with " + title);
    JButton drop = Buttons.plain("Drop", "drop-" + trace.symptom(), () -> model.drop(trace));
    drop.getAccessibleContext().setAccessibleName("Drop the trace of " + title);
    int answers = trace.steps().size();
    Column line = new Column(2);
    line.add(
        Row.growing(
            8,
            0,
            Text.plain(
                title
                    + ", started on "
                    + DayText.written(trace.started())
                    + ", "
                    + CountWords.of(answers, "answer")),
            goOn,
            drop));
    return line;
  }
}
