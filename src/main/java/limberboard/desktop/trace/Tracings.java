package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The traces that have been begun, one a boat and symptom, and which of them each boat is at. For
 * the event thread only.
 */
final class Tracings {
  private final Map<TraceKey, BoatTrace> begun = new HashMap<>();
  private final Map<String, String> current = new HashMap<>();

  /** Which trace a boat is at; it may still be being worked out. */
  Optional<TraceKey> at(String boat) {
    return Optional.ofNullable(current.get(boat)).map(symptom -> new TraceKey(boat, symptom));
  }

  /** The trace of a symptom on a boat, if it has been begun. */
  Optional<BoatTrace> of(TraceKey key) {
    return Optional.ofNullable(begun.get(key));
  }

  /** The boat is at this trace from now on. */
  void go(TraceKey key) {
    current.put(key.boat(), key.symptom());
  }

  /** Keeps a trace as it stands now. */
  void keep(BoatTrace tracing) {
    begun.put(tracing.key(), tracing);
  }

  /** The boat is at no trace; what has been begun is kept. */
  void leave(String boat) {
    current.remove(boat);
  }

  /** Forgets a trace. */
  void forget(TraceKey key) {
    begun.remove(key);
    current.remove(key.boat(), key.symptom());
  }
}
