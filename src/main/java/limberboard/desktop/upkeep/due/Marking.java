package limberboard.desktop.upkeep.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import limberboard.boat.Boat;
import limberboard.desktop.upkeep.entry.Counted;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.entry.EntryForm.Doing;
import limberboard.library.page.Page;
import limberboard.library.value.LogEvents;
import limberboard.upkeep.Due;

/**
 * A form that marks work done.
 *
 * @param dues the ids of what it is for
 * @param form what is typed into it
 */
record Marking(List<String> dues, EntryForm form) {
  /** One form for all of this work, dated today. */
  static Marking of(Boat boat, List<Due> dues, LocalDate today) {
    TreeSet<String> uses = new TreeSet<>();
    dues.forEach(due -> uses.addAll(Counted.uses(boat, due.work().details().interval())));
    List<Doing> doings = dues.stream().map(Marking::doing).toList();
    return new Marking(
        dues.stream().map(Due::id).toList(), new EntryForm(doings, today, List.copyOf(uses)));
  }

  private static Doing doing(Due due) {
    Optional<String> of = due.after().map(Page::id);
    return new Doing(of.isPresent() ? LogEvents.LOOKED_AGAIN : due.work().id(), of, due.title());
  }

  /** Whether it is for exactly this work. */
  boolean isOf(List<Due> others) {
    return dues.equals(others.stream().map(Due::id).toList());
  }
}
