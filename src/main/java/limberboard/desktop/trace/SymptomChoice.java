package limberboard.desktop.trace;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.Model.Zone;
import limberboard.library.Page;
import limberboard.library.Symptom;

/**
 * Which symptoms there are to choose from on a boat. Immutable.
 *
 * @param library the pages
 * @param fitting the boat today
 */
record SymptomChoice(Library library, Fitting fitting) {

  /**
   * The symptoms to be shown.
   *
   * @param zone the chosen zone, or none
   * @param everything whether those of other zones, and those that do not fit the boat, are shown
   *     too, after the others
   */
  List<Noticed> symptoms(Optional<String> zone, boolean everything) {
    return library.all(Symptom.class).stream()
        .map(page -> noticed(page, zone))
        .filter(noticed -> everything || noticed.here() && noticed.fit().fits())
        .sorted(
            Comparator.comparing((Noticed noticed) -> !noticed.fit().fits())
                .thenComparing(noticed -> !noticed.here())
                .thenComparing(noticed -> noticed.page().title()))
        .toList();
  }

  private Noticed noticed(Page<Symptom> page, Optional<String> zone) {
    boolean here = zone.map(id -> page.head().zones().contains(id)).orElse(true);
    return new Noticed(page, fitting.judge(page.head().fits()), here);
  }

  /** How many symptoms that fit the boat are noticed in each zone of its model. */
  Map<String, Integer> counts() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Zone zone : fitting.boat().model().details().places()) {
      counts.put(zone.id(), symptoms(Optional.of(zone.id()), false).size());
    }
    return counts;
  }
}
