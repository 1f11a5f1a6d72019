package limberboard.desktop.upkeep.state;

import java.util.ArrayList;
import java.util.List;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;

/**
 * A piece of due work with its words, as of the day it was worked out for.
 *
 * @param due the work
 * @param state when it runs out
 * @param why the reason
 * @param when when to do it
 * @param effort how long it takes and who does it
 * @param group the group under which it stands: its own, or that of the round it is done with
 */
public record DueLine(Due due, String state, String why, String when, String effort, Group group) {

  /** All that is due on a boat, in its order. Any thread. */
  static List<DueLine> of(Upkeep upkeep) {
    DueWords words = new DueWords(upkeep.fitting().on());
    List<DueLine> lines = new ArrayList<>();
    Group group = Group.OVERDUE;
    for (Due due : upkeep.all()) {
      group = due.round().isPresent() ? group : due.group();
      lines.add(
          new DueLine(
              due, words.state(due), words.why(due), words.plan(due), words.effort(due), group));
    }
    return List.copyOf(lines);
  }

  public String id() {
    return due.id();
  }
}
