package limberboard.desktop.trace;

import java.io.IOException;
import java.util.List;

/** Keeps traces that are not over until next time. Called off the event thread, by one thread. */
public interface TraceStore {
  /** Keeps nothing. */
  TraceStore NONE =
      new TraceStore() {
        @Override
        public Kept read() {
          return new Kept(List.of(), List.of());
        }

        @Override
        public void keep(KeptTrace trace) {
          // nothing is kept
        }

        @Override
        public void drop(String boat, String symptom) {
          // nothing is kept
        }
      };

  /**
   * What has been kept.
   *
   * @param traces those that can be gone on with
   * @param problems a sentence for each that cannot be read
   */
  record Kept(List<KeptTrace> traces, List<String> problems) {
    /** Copies the lists. */
    public Kept {
      traces = List.copyOf(traces);
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads what has been kept; a file that cannot be read is a problem, and the others are read.
   *
   * @throws IOException when the folder cannot be listed
   */
  Kept read() throws IOException;

  /**
   * Keeps a trace in place of the one kept for its boat and symptom before.
   *
   * @throws IOException when it cannot be written
   */
  void keep(KeptTrace trace) throws IOException;

  /**
   * Drops the trace kept for a boat and symptom; without effect when there is none.
   *
   * @throws IOException when it cannot be deleted
   */
  void drop(String boat, String symptom) throws IOException;
}
