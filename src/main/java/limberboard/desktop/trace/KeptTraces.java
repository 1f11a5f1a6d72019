package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;

/**
 * The traces of earlier days that can be gone on with, and the keeping of today's. Files are read
 * and written in the background. For the event thread only.
 */
public final class KeptTraces {
  private final TraceStore store;
  private final Background files;
  private final Notices notices;
  private final Map<TraceKey, KeptTrace> offered = new LinkedHashMap<>();
  private final Map<TraceKey, KeptTrace> written = new HashMap<>();
  private boolean asked;

  /**
   * Nothing read so far.
   *
   * @param store where they are kept
   * @param files reads and writes
   * @param notices is told of those that cannot be gone on with
   */
  public KeptTraces(TraceStore store, Background files, Notices notices) {
    this.store = store;
    this.files = files;
    this.notices = notices;
  }

  /** Reads them, the first time this is called. */
  void read(Runnable done) {
    if (asked) {
      return;
    }
    asked = true;
    files.run(
        "Reading the traces of earlier days",
        store::read,
        kept -> {
          for (KeptTrace trace : kept.traces()) {
            if (written.putIfAbsent(trace.key(), trace) == null) {
              offered.put(trace.key(), trace);
            }
          }
          if (!kept.problems().isEmpty()) {
            notices.warn(String.join(" ", kept.problems()));
          }
          done.run();
        });
  }

  /** The traces of a boat that are not gone on with yet, the latest first. */
  List<KeptTrace> of(String boat) {
    return offered.values().stream().filter(trace -> trace.boat().equals(boat)).toList();
  }

  /** The trace of a symptom on a boat, when it is not gone on with yet. */
  Optional<KeptTrace> of(TraceKey key) {
    return Optional.ofNullable(offered.get(key));
  }

  /** Keeps a trace as it stands now; one without an answer, or of a mended fault, is dropped. */
  void keep(BoatTrace tracing) {
    TraceKey key = tracing.key();
    KeptTrace kept = tracing.kept();
    if (tracing.over() || kept.steps().isEmpty()) {
      drop(key);
      return;
    }
    offered.remove(key);
    if (!kept.equals(written.put(key, kept))) {
      files.run(
          "Keeping the trace",
          () -> {
            store.keep(kept);
            return kept;
          },
          done -> {},
          () -> written.remove(key, kept));
    }
  }

  /** Drops a trace. */
  void drop(TraceKey key) {
    offered.remove(key);
    if (written.remove(key) != null) {
      files.run(
          "Dropping the trace",
          () -> {
            store.drop(key.boat(), key.symptom());
            return key;
          },
          done -> {});
    }
  }
}
