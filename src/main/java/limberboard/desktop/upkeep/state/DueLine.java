package limberboard.desktop.upkeep.state;

import java.util.List;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/**
 * A piece of due work with its words, as of the day it was worked out for.
 *
 * @param due the work
 * @param state when it runs out
 * @param why the reason
 * @param when when to do it
 * @param effort how long it takes and who does it
 */
public record DueLine(Due due, String state, String why, String when, String effort) {

  /** All that is due on a boat, in its order. Any thread. */
  static List<DueLine> of(Upkeep upkeep) {
    DueWords words = new DueWords(upkeep.fitting().on());
    return upkeep.all().stream()
        .map(
            due ->
                new DueLine(
                    due, words.state(due), words.why(due), words.plan(due), DueWords.effort(due)))
        .toList();
  }

  public String id() {
    return due.id();
  }
}
