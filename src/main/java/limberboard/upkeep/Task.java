package limberboard.upkeep;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Phase;

/**
 * A piece of work that a person is to do on a boat, with the reason it is on a list.
 *
 * @param work the procedure's page
 * @param phase when in the boat's year it is done
 * @param why the reason
 * @param due the day on which it runs out; empty when it is done without being due
 * @param round the round that it is done with, if it is
 * @param with of a round, what is done with it
 */
public record Task(
    Page<Procedure> work,
    Phase phase,
    Why why,
    Optional<LocalDate> due,
    Optional<InRound> round,
    List<Task> with) {
  /** Copies the list. */
  public Task {
    with = List.copyOf(with);
  }

  /** Work that is done by itself. */
  public Task(Page<Procedure> work, Phase phase, Why why, Optional<LocalDate> due) {
    this(work, phase, why, due, Optional.empty(), List.of());
  }

  /** The same in another phase, with all that is done with it. */
  public Task in(Phase other) {
    List<Task> all = with.stream().map(each -> each.in(other)).toList();
    return new Task(work, other, why, due, round, all);
  }

  /** The same as a round with what is done with it. */
  public Task with(List<Task> all) {
    return new Task(work, phase, why, due, round, all);
  }

  /** What it asks of the owner, in practised minutes; of a round, with all that is done with it. */
  public int minutes() {
    return round.map(InRound::minutes).orElseGet(() -> OwnerTime.of(work.details()))
        + with.stream().mapToInt(Task::minutes).sum();
  }

  /** It, and of a round all that is done with it. */
  public Stream<Task> all() {
    return Stream.concat(Stream.of(this), with.stream());
  }

  /** Its page, and of a round the pages of what is done with it. */
  public List<Page<Procedure>> pages() {
    return Stream.concat(Stream.of(work), with.stream().map(Task::work)).toList();
  }

  /** Ids of all that has to be open, each once; of a round, for what is done with it too. */
  public List<String> access() {
    Set<String> all = new LinkedHashSet<>();
    pages().forEach(page -> all.addAll(page.details().access()));
    return List.copyOf(all);
  }
}
