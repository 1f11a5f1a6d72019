package limberboard.desktop.upkeep.due;

import java.util.List;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.upkeep.Due;
import limberboard.words.Minutes;

/** What can be done with all ticked work at once, and how long it takes together. */
public final class Together extends Column {
  private final Wrapped words = Text.plain("");
  private final JButton mark;
  private final Row buttons;

  /**
   * Hidden while nothing is ticked.
   *
   * @param name begins the names of the buttons
   * @param markDone opens one form for all
   * @param shop shops for what is ticked
   * @param untick takes all ticks away
   */
  public Together(String name, Runnable markDone, Runnable shop, Runnable untick) {
    super(4);
    mark = Buttons.main("", name + "-mark-ticked", markDone);
    JButton buy = Buttons.plain("Shop for them", name + "-shop-ticked", shop);
    JButton none = Buttons.plain("Untick", name + "-untick", untick);
    words.setName(name + "-ticked");
    buttons = Row.wrapping(8, mark, buy, none);
    add(words);
    add(buttons);
  }

  /** Shows how much is ticked. */
  public void show(List<Due> ticked, double minutes) {
    show(ticked.size(), minutes);
  }

  /** Shows how much is ticked, in minutes. */
  public void show(int count, double minutes) {
    setVisible(count > 0);
    words.setText(count + " ticked: " + Minutes.words(minutes) + " of work");
    mark.setText(count == 1 ? "Mark it done …" : "Mark all " + count + " done …");
    revalidate();
  }
}
