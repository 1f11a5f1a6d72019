package limberboard.desktop.parts;

import java.awt.EventQueue;
import javax.swing.JComboBox;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/**
 * Takes what is selected in a list that opens below a box: once it closes, unless it was put away
 * with Escape, and at once when it is not open. Moving through the open list takes nothing.
 */
public final class ListClosing implements PopupMenuListener {
  private final Runnable take;
  private final Runnable putAway;
  private boolean cancelled;

  private ListClosing(Runnable take, Runnable putAway) {
    this.take = take;
    this.putAway = putAway;
  }

  /**
   * Listens to a box.
   *
   * @param box the box
   * @param take takes what is selected
   * @param putAway shows again what was chosen before
   */
  public static void of(JComboBox<?> box, Runnable take, Runnable putAway) {
    box.addActionListener(
        e -> {
          if (!box.isPopupVisible()) {
            take.run();
          }
        });
    box.addPopupMenuListener(new ListClosing(take, putAway));
  }

  @Override
  public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
    cancelled = false;
  }

  @Override
  public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
    EventQueue.invokeLater(
        () -> {
          (cancelled ? putAway : take).run();
          cancelled = false;
        });
  }

  @Override
  public void popupMenuCanceled(PopupMenuEvent e) {
    cancelled = true;
  }
}
