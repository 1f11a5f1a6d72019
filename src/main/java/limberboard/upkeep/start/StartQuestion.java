package limberboard.upkeep.start;

import java.util.Comparator;
import java.util.List;
import limberboard.library.value.Consequence;
import limberboard.upkeep.Due;

/**
 * One question about work that nobody knows when it was done: a round, or one kind of work on one
 * part of the boat.
 *
 * @param id by which it is answered: the round's page, or such as {@code rig-renewals}
 * @param title what a person reads
 * @param works what it asks about, at least one, the gravest first; of a round its own page first
 * @param isRound whether it asks about a round
 */
public record StartQuestion(String id, String title, List<Due> works, boolean isRound) {
  /** Copies the list. */
  public StartQuestion {
    works = List.copyOf(works);
  }

  /** The worst that follows when any of it is left undone. */
  public Consequence consequence() {
    return works.stream()
        .map(Due::ownConsequence)
        .min(Comparator.naturalOrder())
        .orElse(Consequence.UNSAID);
  }

  /** What can be answered by itself: all of it, but of a round its own page, which follows. */
  public List<Due> parts() {
    List<Due> others = works.stream().filter(due -> !due.work().id().equals(id)).toList();
    return others.isEmpty() ? works : others;
  }

  /** How many of them are looks, which a survey can have done. */
  public long looks() {
    return works.stream().filter(Due::isLook).count();
  }
}
