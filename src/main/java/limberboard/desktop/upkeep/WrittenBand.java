package limberboard.desktop.upkeep;

import java.util.Optional;
import javax.swing.JButton;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Days;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sheet;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.LogModel.Remark;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/** What was written into the log and when the work comes next, with the way back. */
final class WrittenBand extends Sheet {
  private final transient UpkeepModel upkeep;
  private final transient LogModel log;
  private final Wrapped words = Text.strong("");
  private final JButton undo;

  WrittenBand(UpkeepModel upkeep, LogModel log) {
    super(4);
    this.upkeep = upkeep;
    this.log = log;
    padded(8, 14, 8, 10);
    undo = Buttons.plain("Undo", log::undo);
    undo.setName("undo-log");
    undo.setToolTipText("Takes this line out of the log again (Ctrl+Z)");
    JButton away = Buttons.plain("Close", log::dismiss);
    away.setName("dismiss-log");
    words.setName("written");
    add(Row.growing(8, 0, words, undo, away));
    upkeep.onChange(this::refresh);
    log.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Optional<Remark> remark = log.remark();
    setVisible(remark.isPresent());
    words.setText(remark.map(this::words).orElse(""));
    undo.setVisible(remark.flatMap(Remark::entry).isPresent());
    undo.setEnabled(log.canUndo());
    revalidate();
    repaint();
  }

  private String words(Remark remark) {
    return remark.text() + remark.entry().flatMap(this::next).orElse("");
  }

  private Optional<String> next(LogEntry entry) {
    String id = entry.of().map(of -> of + Due.AGAIN).orElse(entry.work());
    return upkeep
        .upkeep()
        .filter(known -> isIn(known, entry))
        .flatMap(known -> known.all().stream().filter(due -> due.id().equals(id)).findFirst())
        .flatMap(Due::runsOut)
        .map(day -> " It comes next by " + Days.written(day) + ".");
  }

  private static boolean isIn(Upkeep known, LogEntry entry) {
    return known.fitting().boat().log().stream()
        .anyMatch(
            line ->
                line.date().equals(entry.date())
                    && line.work().equals(entry.work())
                    && line.of().equals(entry.of()));
  }
}
