package limberboard.desktop.upkeep;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogBook.Outcome;
import limberboard.boat.LogBook.Refused;
import limberboard.boat.LogBook.Written;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Session;

/**
 * Writes the chosen boat's log and takes out again what was written since the window was opened,
 * without Swing. For the event thread only.
 */
public final class LogModel {
  private final Session session;
  private final LogStore store;
  private final Background background;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<String, Deque<Written>> written = new HashMap<>();
  private final Map<String, Remark> remarks = new HashMap<>();
  private Runnable afterWriting = () -> {};
  private boolean busy;

  /**
   * A model.
   *
   * @param session tells library and boat
   * @param store where logs are kept
   * @param background writes them
   */
  public LogModel(Session session, LogStore store, Background background) {
    this.session = session;
    this.store = store;
    this.background = background;
    session.onChange(this::tell);
  }

  /**
   * What came of the last writing.
   *
   * @param text in a sentence
   * @param entry what was written, if it was and still stands
   * @param failed whether it did not work
   */
  public record Remark(String text, Optional<LogEntry> entry, boolean failed) {}

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** Says what happens once a log has been changed: it is read anew. */
  public void afterWriting(Runnable action) {
    afterWriting = action;
  }

  /** What came of the last writing into the chosen boat's log. */
  public Optional<Remark> remark() {
    return id().map(remarks::get);
  }

  /** Puts the remark away. */
  public void dismiss() {
    id().ifPresent(remarks::remove);
    tell();
  }

  /** Whether something is being written. */
  public boolean isBusy() {
    return busy;
  }

  /** Whether there is something to be taken out again. */
  public boolean canUndo() {
    return !busy && id().map(written::get).filter(all -> !all.isEmpty()).isPresent();
  }

  /**
   * Writes an entry into the chosen boat's log.
   *
   * @param done is called when it has been written
   */
  public void add(LogEntry entry, Runnable done) {
    Optional<Boat> boat = session.boat();
    if (busy || boat.isEmpty()) {
      return;
    }
    String id = boat.get().id();
    String whose = boat.get().name() + "’s log";
    begin();
    background.run(
        "Writing the log",
        () -> attempt(() -> store.add(id, entry)),
        outcome -> {
          busy = false;
          if (outcome.value().orElse(null) instanceof Written line) {
            written.computeIfAbsent(id, key -> new ArrayDeque<>()).push(line);
            String words = "Written into " + whose + ": " + said(entry) + ".";
            remarks.put(id, new Remark(words, Optional.of(entry), false));
            done.run();
            afterWriting.run();
          } else {
            refused(id, "Nothing was written into " + whose + ": ", outcome.why());
          }
          tell();
        },
        () -> busy = false);
  }

  /** Takes the line out again that was written last. */
  public void undo() {
    if (!canUndo()) {
      return;
    }
    String id = id().orElseThrow();
    String whose = session.boat().orElseThrow().name() + "’s log";
    Written line = written.get(id).peek();
    begin();
    background.run(
        "Writing the log",
        () -> attempt(() -> store.undo(line).<Outcome>map(Refused::new).orElse(line)),
        outcome -> {
          busy = false;
          if (outcome.value().orElse(null) instanceof Written) {
            written.get(id).remove(line);
            String words = "Taken out of " + whose + " again: " + said(line.entry()) + ".";
            remarks.put(id, new Remark(words, Optional.empty(), false));
            afterWriting.run();
          } else {
            refused(id, "Nothing was taken out of " + whose + ": ", outcome.why());
          }
          tell();
        },
        () -> busy = false);
  }

  private void begin() {
    busy = true;
    id().ifPresent(remarks::remove);
    tell();
  }

  private void refused(String id, String what, String why) {
    remarks.put(id, new Remark(what + why, Optional.empty(), true));
  }

  private String said(LogEntry entry) {
    return new EntryWords(session.library()).line(entry);
  }

  private Optional<String> id() {
    return session.boat().map(Boat::id);
  }

  /** What writing came to, with the reason when it did not work. */
  private record Attempt(Optional<Outcome> value, String why) {}

  /** Something that writes. */
  private interface Writing {
    Outcome write() throws IOException;
  }

  private static Attempt attempt(Writing writing) {
    try {
      Outcome outcome = writing.write();
      String why = outcome instanceof Refused refused ? EntryWords.reason(refused.problem()) : "";
      return new Attempt(Optional.of(outcome), why);
    } catch (IOException e) {
      return new Attempt(Optional.empty(), EntryWords.reason(e));
    }
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
