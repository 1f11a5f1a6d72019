package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;

/** Reckons with how long a material keeps. Immutable. */
record Keeping(Material material, LocalDate today) {

  /**
   * The first day of buying, so that what is bought is good on its last day of use; empty when
   * buying today will do.
   */
  Optional<LocalDate> buyFrom(LocalDate lastUse) {
    if (material.shelfLife().isEmpty()) {
      return Optional.empty();
    }
    Period life = material.shelfLife().get();
    LocalDate from = FarDays.before(lastUse, life);
    while (FarDays.after(from, life).isBefore(lastUse)) {
      from = from.plusDays(1);
    }
    return from.isAfter(today) ? Optional.of(from) : Optional.empty();
  }

  /**
   * Divides uses, sorted by day, into runs short enough for one opened pack to keep. How they are
   * divided does not depend on the stock, so that having something never makes buying dearer.
   */
  List<List<Usage>> runs(List<Usage> uses) {
    List<List<Usage>> runs = new ArrayList<>();
    LocalDate last = LocalDate.MIN;
    for (Usage use : uses) {
      if (runs.isEmpty() || use.by().day().isAfter(last)) {
        runs.add(new ArrayList<>());
        last = lastDayOfRun(use.by().day());
      }
      runs.get(runs.size() - 1).add(use);
    }
    return runs;
  }

  private LocalDate lastDayOfRun(LocalDate first) {
    LocalDate last = LocalDate.MAX;
    for (Optional<Period> life : List.of(material.openedLife(), material.shelfLife())) {
      LocalDate until = life.map(period -> FarDays.after(first, period)).orElse(last);
      last = until.isBefore(last) ? until : last;
    }
    return last;
  }
}
