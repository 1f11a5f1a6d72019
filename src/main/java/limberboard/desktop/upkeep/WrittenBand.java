package limberboard.desktop.upkeep;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JRootPane;
import limberboard.boat.LogEntry;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.LimitedHeight;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.entry.LogModel.Remark;
import limberboard.desktop.upkeep.entry.UndoButtons;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.upkeep.Due;
import limberboard.upkeep.WorkId;
import limberboard.words.DayText;

/**
 * What was changed in the log and when the work comes next, in a line, with the way back and forth;
 * of several changed lines how many, and on demand each.
 */
final class WrittenBand extends RaisedColumn {
  private static final int SHARE = 4;
  private final transient UpkeepModel upkeep;
  private final transient LogModel log;
  private final Wrapped words = Text.plain("");
  private final Column lines = new Column(2);
  private final LimitedHeight limited = new LimitedHeight(lines, this::most);
  private final JButton more = Buttons.plain("", "written-lines", this::turn);
  private final UndoButtons undo;
  private transient List<String> shown = List.of();
  private boolean all;

  /**
   * A band.
   *
   * @param back puts the focus back into what is looked at
   */
  WrittenBand(UpkeepModel upkeep, LogModel log, Runnable back) {
    super(4);
    limited.setName("written-all");
    lines.setOpaque(false);
    this.upkeep = upkeep;
    this.log = log;
    padded(8, 14, 8, 10);
    undo = new UndoButtons("", log, back);
    JButton away =
        Buttons.plain(
            "Put away",
            "dismiss-log",
            () -> {
              log.dismiss();
              back.run();
            });
    words.setName("written");
    add(Row.worded(8, words, more, undo.undo(), undo.redo(), away));
    add(limited);
    upkeep.onChange(this::refresh);
    log.onChange(this::refresh);
    refresh();
  }

  /** The rest scrolls once it would take the room of what is looked at. */
  private int most() {
    JRootPane root = getRootPane();
    return root == null || root.getHeight() == 0 ? Integer.MAX_VALUE : root.getHeight() / SHARE;
  }

  /** Shows the lines one by one, or no more. */
  private void turn() {
    all = !all;
    refresh();
  }

  private void refresh() {
    Optional<Remark> remark = log.remark();
    setVisible(remark.isPresent());
    List<String> now = remark.map(Remark::lines).orElse(List.of());
    if (!now.equals(shown)) {
      shown = now;
      all = false;
      lines.removeAll();
      shown.forEach(line -> lines.add(Text.plain(line)));
    }
    more.setVisible(!shown.isEmpty());
    more.setText(all ? "Hide the lines" : "Show the lines");
    limited.setVisible(all);
    words.setText(remark.map(this::words).orElse(""));
    revalidate();
    repaint();
  }

  private String words(Remark remark) {
    return remark.text()
        + (remark.entries().size() == 1 ? next(remark.entries().get(0)).orElse("") : "");
  }

  private Optional<String> next(LogEntry entry) {
    WorkId done = WorkId.of(entry);
    return upkeep
        .upkeep()
        .filter(known -> known.fitting().boat().log().stream().anyMatch(entry::saysTheSame))
        .flatMap(known -> known.all().stream().filter(due -> due.which().equals(done)).findFirst())
        .flatMap(Due::runsOut)
        .map(day -> " It comes next by " + DayText.written(day) + ".");
  }
}
