package limberboard.desktop.upkeep.entry;

import java.util.Optional;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;

/** Takes changes of the log back and makes them again; each button says which change. */
public final class UndoButtons {
  private static final int LONGEST = 44;
  private final LogModel log;
  private final JButton undo;
  private final JButton redo;

  /**
   * Buttons.
   *
   * @param where ends the names of the buttons
   * @param back puts the focus where the person was
   */
  public UndoButtons(String where, LogModel log, Runnable back) {
    this.log = log;
    undo =
        Buttons.plain(
            "",
            "undo-log" + where,
            () -> {
              log.undo();
              back.run();
            });
    redo =
        Buttons.plain(
            "",
            "redo-log" + where,
            () -> {
              log.redo();
              back.run();
            });
    log.onChange(this::refresh);
    refresh();
  }

  public JButton undo() {
    return undo;
  }

  public JButton redo() {
    return redo;
  }

  private void refresh() {
    show(undo, "Undo", log.toUndo(), "Ctrl+Z");
    show(redo, "Redo", log.toRedo(), "Ctrl+Shift+Z or Ctrl+Y");
  }

  private static void show(JButton button, String word, Optional<String> what, String keys) {
    button.setVisible(what.isPresent());
    String whole = word + " " + what.orElse("");
    button.setText(whole.length() > LONGEST ? whole.substring(0, LONGEST - 1) + "…" : whole);
    button.setToolTipText(whole + " (" + keys + ")");
    button.getAccessibleContext().setAccessibleName(whole);
  }
}
