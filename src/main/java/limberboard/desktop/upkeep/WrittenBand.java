package limberboard.desktop.upkeep;

import java.util.Optional;
import javax.swing.JButton;
import limberboard.boat.LogEntry;
import limberboard.desktop.parts.Buttons;
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

/** What was changed in the log and when the work comes next, with the way back and forth. */
final class WrittenBand extends RaisedColumn {
  private final transient UpkeepModel upkeep;
  private final transient LogModel log;
  private final Wrapped words = Text.strong("");
  private final UndoButtons undo;

  /**
   * A band.
   *
   * @param back puts the focus back into what is looked at
   */
  WrittenBand(UpkeepModel upkeep, LogModel log, Runnable back) {
    super(4);
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
    add(words);
    add(Row.wrapping(8, undo.undo(), undo.redo(), away));
    upkeep.onChange(this::refresh);
    log.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Optional<Remark> remark = log.remark();
    setVisible(remark.isPresent());
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
