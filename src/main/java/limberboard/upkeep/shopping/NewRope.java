package limberboard.upkeep.shopping;

import java.time.LocalDate;
import limberboard.rigging.Rope;

/**
 * A rope of the boat's list of ropes, or several alike, that is cut anew.
 *
 * @param rope the rope as the list has it
 * @param day the day on which it is needed
 */
public record NewRope(Rope rope, LocalDate day) implements BoughtFor {
  @Override
  public String id() {
    return rope.id();
  }

  @Override
  public String title() {
    return rope.title();
  }

  @Override
  public int times() {
    return 1;
  }
}
