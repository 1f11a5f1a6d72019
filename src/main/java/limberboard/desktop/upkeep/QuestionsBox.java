package limberboard.desktop.upkeep;

import java.util.List;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.EntryWords;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.problem.Problem;

/** Questions about the boat's files, with file and line. */
final class QuestionsBox extends RaisedColumn {
  private static final int FEW = 2;
  private final transient UpkeepModel model;
  private final Wrapped title = Text.strong("");
  private final Column lines = new Column(4);
  private final JButton more = Buttons.link("", this::turn);
  private transient List<Problem> shown = List.of();
  private boolean all;

  QuestionsBox(UpkeepModel model) {
    super(6);
    padded(10, 14, 10, 14);
    this.model = model;
    more.setName("questions-more");
    add(Row.growing(8, 0, title, more));
    add(lines);
    model.onChange(this::refresh);
    refresh();
  }

  /** Whether somebody has asked for all of them. */
  boolean isWhole() {
    return all;
  }

  private void turn() {
    all = !all;
    fill();
  }

  private void refresh() {
    setVisible(!model.questions().isEmpty());
    if (!model.questions().equals(shown)) {
      shown = model.questions();
      all = false;
      fill();
    }
  }

  private void fill() {
    title.setText(
        shown.size() == 1
            ? "One question about the boat’s files. Please look:"
            : shown.size() + " questions about the boat’s files. Please look:");
    lines.removeAll();
    shown.stream()
        .limit(all ? Long.MAX_VALUE : FEW)
        .map(problem -> Text.plain(EntryWords.reason(problem) + "."))
        .forEach(lines::add);
    more.setVisible(shown.size() > FEW);
    more.setText(all ? "Show fewer" : "Show all " + shown.size());
    revalidate();
    repaint();
  }
}
