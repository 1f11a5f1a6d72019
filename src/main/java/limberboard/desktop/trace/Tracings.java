package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * The traces that have been begun, one a boat and symptom, and which of them each boat is at. For
 * the event thread only.
 */
final class Tracings {
  private final Map<String, Map<String, Tracing>> begun = new HashMap<>();
  private final Map<String, String> current = new HashMap<>();

  /** The trace that a boat is at. */
  Optional<Tracing> current(String boat) {
    return Optional.ofNullable(current.get(boat)).flatMap(symptom -> of(boat, symptom));
  }

  /** The trace of a symptom on a boat, if it has been begun. */
  Optional<Tracing> of(String boat, String symptom) {
    return Optional.ofNullable(begun.getOrDefault(boat, Map.of()).get(symptom));
  }

  /** Keeps a trace, and makes it the one its boat is at. */
  void keep(Tracing tracing) {
    begun.computeIfAbsent(tracing.boat(), boat -> new HashMap<>()).put(tracing.symptom(), tracing);
    current.put(tracing.boat(), tracing.symptom());
  }

  /** The boat is at no trace; what has been begun is kept. */
  void leave(String boat) {
    current.remove(boat);
  }

  /** Forgets a trace. */
  void forget(Tracing tracing) {
    begun.getOrDefault(tracing.boat(), new HashMap<>()).remove(tracing.symptom());
    current.remove(tracing.boat(), tracing.symptom());
  }

  /** Renews all traces, and forgets those that are no longer possible. */
  void renew(UnaryOperator<Tracing> renewed, Predicate<Tracing> possible) {
    for (Map<String, Tracing> ofBoat : begun.values()) {
      ofBoat.replaceAll((symptom, tracing) -> renewed.apply(tracing));
      ofBoat.values().removeIf(possible.negate());
    }
  }
}
