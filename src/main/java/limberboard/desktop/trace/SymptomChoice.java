package limberboard.desktop.trace;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * Which symptoms there are to choose from on a boat. Immutable.
 *
 * @param judged every symptom with whether the boat can have it, those that it can first
 * @param counts how many symptoms that fit the boat are noticed in each zone that has any
 * @param fitting how many symptoms fit the boat
 */
record SymptomChoice(List<Judged> judged, Map<String, Integer> counts, int fitting) {
  /** Nothing to choose from. */
  static final SymptomChoice NONE = new SymptomChoice(List.of(), Map.of(), 0);

  SymptomChoice {
    judged = List.copyOf(judged);
    counts = Map.copyOf(counts);
  }

  /** A symptom, and whether the boat can have it. */
  record Judged(Page<Symptom> page, Fit fit) {}

  /** Looks through a library once. */
  static SymptomChoice of(Library library, Fitting fitting) {
    List<Judged> judged =
        library.all(Symptom.class).stream()
            .map(page -> new Judged(page, fitting.judge(page.head().fits())))
            .sorted(
                Comparator.comparing((Judged each) -> !each.fit().fits())
                    .thenComparing(each -> each.page().title()))
            .toList();
    Map<String, Integer> counts = new HashMap<>();
    int fits = 0;
    for (Judged each : judged) {
      if (each.fit().fits()) {
        fits++;
        each.page().head().zones().stream()
            .distinct()
            .forEach(zone -> counts.merge(zone, 1, Integer::sum));
      }
    }
    return new SymptomChoice(judged, counts, fits);
  }

  /**
   * The symptoms to be shown.
   *
   * @param zone the chosen zone, or none
   * @param everything whether those of other zones, and those that do not fit the boat, are shown
   *     too, after the others
   */
  List<OfferedSymptom> symptoms(Optional<String> zone, boolean everything) {
    return judged.stream()
        .map(each -> new OfferedSymptom(each.page(), each.fit(), isHere(each.page(), zone)))
        .filter(noticed -> everything || noticed.here() && noticed.fit().fits())
        .sorted(
            Comparator.comparing((OfferedSymptom noticed) -> !noticed.fit().fits())
                .thenComparing(noticed -> !noticed.here()))
        .toList();
  }

  private static boolean isHere(Page<Symptom> page, Optional<String> zone) {
    return zone.map(id -> page.head().zones().contains(id)).orElse(true);
  }
}
